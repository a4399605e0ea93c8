package org.firnline.app.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.evidence.Problem;
import org.firnline.lab.Dryer;
import org.firnline.lab.Load;
import org.firnline.lab.Portion;
import org.firnline.units.QuantityKind;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;

/** Reads a plan file, YAML or JSON, and reports everything wrong with it together. */
public final class PlanFileReader {
  private static final String NO_MORE = "the file holds no keys";

  /**
   * Reads a plan.
   *
   * @param fileName its name, for messages
   * @param text all of it
   */
  public PlanReading read(String fileName, String text) {
    PlanProblems problems = new PlanProblems(fileName);
    List<Assumption> assumptions = new ArrayList<>();
    Optional<Node> root = tree(text, problems);
    Optional<PlanInput> input =
        problems.none() ? understand(root, problems, assumptions) : Optional.empty();
    return new PlanReading(
        problems.none() ? input : Optional.empty(), problems.inOrder(), assumptions);
  }

  private static Optional<Node> tree(String text, PlanProblems problems) {
    try {
      Optional<Node> root = PlanTree.of(text);
      if (root.isEmpty()) {
        problems.at(
            1, 1, "", new Problem("empty-file", "the plan", "", NO_MORE, "start with 'vessel:'"));
      }
      return root;
    } catch (MarkedYAMLException e) {
      Mark mark = e.getProblemMark();
      String what = e.getProblem() == null ? "the text" : e.getProblem();
      problems.at(
          mark == null ? 1 : mark.getLine() + 1,
          mark == null ? 1 : mark.getColumn() + 1,
          "",
          notYaml(what));
    } catch (YAMLException e) {
      problems.at(1, 1, "", notYaml("the text"));
    }
    return Optional.empty();
  }

  private static Problem notYaml(String what) {
    return new Problem(
        "not-yaml", what, "", "cannot be read as YAML", "check indentation, quotes and colons");
  }

  private static Optional<PlanInput> understand(
      Optional<Node> root, PlanProblems problems, List<Assumption> assumptions) {
    PlanSection top = new PlanSection("", root, PlanKeys.in(""), problems, assumptions);
    PlanValues values = new PlanValues(top);
    String title = values.text("plan");
    Optional<Load> load = load(top, problems);
    DryerReader machine = new DryerReader(top, problems);
    Optional<Dryer> dryer = machine.read();
    double room = values.number("room", QuantityKind.TEMPERATURE);
    Optional<PlanWishes> wishes = new WishReader(top, machine.steps()).read();
    PlanSection hold = top.section("recipe", PlanKeys.in("recipe"));
    PlanValues recipe = new PlanValues(hold);
    var shelf_K = recipe.optionalNumber("shelf", QuantityKind.TEMPERATURE);
    var pressure_Pa = recipe.optionalNumber("pressure", QuantityKind.PRESSURE);
    if (shelf_K.isPresent() != pressure_Pa.isPresent()) {
      problems.missing(
          shelf_K.isPresent() ? "recipe.pressure" : "recipe.shelf",
          "give both to choose the hold yourself, or none to have it recommended");
    }
    positive(shelf_K, hold, "shelf");
    positive(pressure_Pa, hold, "pressure");
    var start = values.optionalTime("start");
    if (load.isEmpty() || dryer.isEmpty() || wishes.isEmpty() || !problems.none()) {
      return Optional.empty();
    }
    return Optional.of(
        new PlanInput(
            title, load.get(), dryer.get(), room, wishes.get(), shelf_K, pressure_Pa, start));
  }

  private static Optional<Load> load(PlanSection top, PlanProblems problems) {
    List<Portion> portions = new ArrayList<>();
    new PortionReader(top, problems).read().ifPresent(portions::add);
    for (PlanSection item : top.list(PlanKeys.ALSO, PlanKeys.ITEM)) {
      new PortionReader(item, problems).read().ifPresent(portions::add);
    }
    return portions.isEmpty() ? Optional.empty() : Optional.of(new Load(portions));
  }

  private static void positive(OptionalDouble value, PlanSection hold, String key) {
    if (value.isPresent() && !Double.isNaN(value.getAsDouble()) && value.getAsDouble() <= 0) {
      hold.blame(
          key,
          new Problem(
              "not-positive", "recipe." + key, "", "must be above zero", "check sign and unit"));
    }
  }
}
