package org.firnline.app.planfile;

import java.util.ArrayList;
import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.evidence.Band;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Portion;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;
import org.firnline.planning.design.Proposal;
import org.firnline.units.QuantityKind;

/** Says a recipe and what stands beside it; page, card and terminal share the words. */
public final class DesignWords {
  private static final int WIDTH = 92;

  private final Words words;
  private final Shown shown;
  private final HazardWords hazards;

  public DesignWords(Words words, Shown shown) {
    this.words = words;
    this.shown = shown;
    this.hazards = new HazardWords(words);
  }

  /** A step to type, every part in words. */
  public record Line(String phase, String shelf, String pressure, String ramp, String hold) {}

  /** A recipe line by line. */
  public List<Line> lines(Recipe recipe) {
    return recipe.steps().stream().map(this::line).toList();
  }

  private Line line(RecipeStep step) {
    boolean backfill = step.phase() == RecipePhase.BACKFILL;
    return new Line(
        words.say("design.phase." + CheckWords.key(step.phase())),
        Quantities.words(step.shelfTarget(), QuantityKind.TEMPERATURE),
        step.pressure().isPresent()
            ? Quantities.words(step.pressure().getAsDouble(), QuantityKind.PRESSURE)
            : words.say(backfill ? "design.backfill" : "design.no-pressure"),
        Quantities.words(step.ramp(), QuantityKind.TEMPERATURE_RATE),
        Quantities.words(step.hold(), QuantityKind.TIME));
  }

  /** What a proposal is called. */
  public String name(Proposal proposal) {
    return words.say("design.kind." + CheckWords.key(proposal.kind()));
  }

  /** "45 to 71 h". */
  public String time(Band band) {
    return Double.isFinite(band.low())
        ? shown.durations(band.low(), band.high())
        : words.say("plan.headline.never");
  }

  /** A probability. */
  public String risk(double share) {
    return Quantities.words(share, QuantityKind.FRACTION);
  }

  /** The settings of primary drying on one line: "−30.5 °C, 4.0 Pa · −28 °C, 4.0 Pa". */
  public String settings(Proposal proposal) {
    if (proposal.kind() == Proposal.Kind.IDEAL) {
      return words.say("design.settings.ideal");
    }
    List<String> steps = new ArrayList<>();
    proposal
        .steps()
        .forEach(
            step ->
                steps.add(
                    Quantities.words(step.shelf_K(), QuantityKind.TEMPERATURE)
                        + (step.pressure_Pa().isPresent()
                            ? ", "
                                + Quantities.words(
                                    step.pressure_Pa().getAsDouble(), QuantityKind.PRESSURE)
                            : "")));
    return steps.isEmpty() ? words.say("design.settings.none") : String.join(" · ", steps);
  }

  /** "Ruth: 60 × 10R, 3.0 mL each, bog-myrtle extract". */
  public String portion(Portion portion) {
    LoadItem item = portion.item();
    return words.say(
        "design.portion",
        portion.owner(),
        String.valueOf(item.count()),
        item.vessel().name(),
        Quantities.words(item.fill(), QuantityKind.VOLUME),
        item.product().name());
  }

  /** The cautions of a load. */
  public List<HazardWords.Caution> cautions(DesignedPlan plan) {
    return hazards.of(plan.input().whole());
  }

  /** What one item of a shared run has to know. */
  public String note(SharedRun.Item item, Band end) {
    List<String> notes = new ArrayList<>();
    if (item.rulesTemperature()) {
      notes.add(words.say("design.item.rules-temperature"));
    }
    if (item.rulesTime()) {
      notes.add(words.say("design.item.rules-time"));
    }
    double gain = item.gainAlone_s(end.best());
    if (gain > end.best() / 20) {
      notes.add(words.say("design.item.gain", Quantities.words(gain, QuantityKind.TIME)));
    }
    return notes.isEmpty() ? words.say("design.item.fits") : String.join(" ", notes);
  }

  /** Everything for a terminal. */
  public List<String> report(DesignedPlan plan) {
    List<String> lines = new ArrayList<>();
    lines.add(words.say("design.title"));
    List<List<String>> rows = new ArrayList<>();
    for (Proposal proposal : plan.design().proposals()) {
      rows.add(
          List.of(
              "  " + name(proposal),
              time(proposal.outlook().lastTime_s()),
              words.say("design.risk", risk(proposal.outlook().overheatingRisk())),
              settings(proposal)));
    }
    lines.addAll(TextTable.of(rows));
    plan.first()
        .recipe()
        .ifPresent(
            recipe -> {
              lines.add("");
              lines.add(words.say("plan.card"));
              lines.addAll(
                  TextTable.of(
                      lines(recipe).stream()
                          .map(
                              line ->
                                  List.of(
                                      "  " + line.phase(),
                                      line.shelf(),
                                      line.pressure(),
                                      line.ramp(),
                                      line.hold()))
                          .toList()));
            });
    SharedRun shared = SharedRun.of(plan);
    if (!shared.items().isEmpty()) {
      lines.add("");
      lines.add(words.say("design.items"));
      for (SharedRun.Item item : shared.items()) {
        String head = item.shared().owner() + ", " + item.shared().name() + ": ";
        lines.addAll(
            TextTable.hanging(
                "  ",
                head
                    + time(item.shared().lastTime_s())
                    + ". "
                    + note(item, plan.first().outlook().lastTime_s()),
                2,
                WIDTH));
      }
    }
    lines.add("");
    for (HazardWords.Caution caution : cautions(plan)) {
      String sign = words.say("state." + CheckWords.key(caution.verdict()));
      lines.addAll(TextTable.hanging("  " + sign, caution.sentence(), 9, WIDTH));
    }
    return lines;
  }
}
