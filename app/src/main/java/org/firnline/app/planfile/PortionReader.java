package org.firnline.app.planfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firnline.app.planfile.PlanSection.Entry;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.lab.Hazard;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Portion;
import org.firnline.lab.Product;
import org.firnline.lab.Vessel;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;
import org.firnline.units.QuantityKind;

/** Reads one item of a load: what is dried, in what, how many of them, whose, and its hazards. */
final class PortionReader {
  private static final Pattern NAME_AND_SHARE = Pattern.compile("(.+?)\\s+([0-9.,]+\\s*%)");
  private static final int MOST_RISK_GROUP = 4;

  private final PlanSection item;
  private final PlanProblems problems;

  PortionReader(PlanSection item, PlanProblems problems) {
    this.item = item;
    this.problems = problems;
  }

  Optional<Portion> read() {
    PlanSection unknownKind = item.section("vessel", PlanKeys.in("vessel"));
    String kind = VesselReader.kind(unknownKind);
    PlanSection vessel = unknownKind.of(kind);
    Optional<Product> product = new ProductReader(item, problems).read();
    Optional<Vessel> container = new VesselReader(vessel, problems).read(kind);
    double fill = fill(vessel, kind, container);
    PlanValues values = new PlanValues(item.of(kind));
    int count = values.count("count");
    double edgeShare = values.number("edge_share", QuantityKind.FRACTION);
    String owner = values.text("owner");
    List<Hazard> hazards = hazards();
    if (!problems.none() || product.isEmpty() || container.isEmpty()) {
      return Optional.empty();
    }
    try {
      LoadItem load = new LoadItem(product.get(), container.get(), fill, count, edgeShare);
      frozen(load);
      return Optional.of(new Portion(load, owner, hazards));
    } catch (InvalidInputException e) {
      blame(vessel, e);
      return Optional.empty();
    }
  }

  /** Asks for the frozen layer once, so that a shell that is too thick is refused here. */
  private static double frozen(LoadItem load) {
    return load.frozenDepth();
  }

  /** A piece is filled by itself. */
  private static double fill(PlanSection vessel, String kind, Optional<Vessel> container) {
    if (kind.equals("piece") && !vessel.has("fill")) {
      return container.map(Vessel::largestFill).orElse(Double.NaN);
    }
    return new PlanValues(vessel).number("fill", QuantityKind.VOLUME);
  }

  private void blame(PlanSection vessel, InvalidInputException refusal) {
    for (Problem problem : refusal.problems()) {
      switch (problem.where()) {
        case "fill volume" -> vessel.blame("fill", problem);
        case "count" -> item.blame("count", problem);
        default -> item.blame("edge_share", problem);
      }
    }
  }

  private List<Hazard> hazards() {
    PlanSection section = item.section("hazards", PlanKeys.in("hazards"));
    PlanValues values = new PlanValues(section);
    List<Hazard> hazards = new ArrayList<>();
    section
        .optionalEntry("solvent")
        .flatMap(entry -> solvent(section, entry))
        .ifPresent(hazards::add);
    values.optionalText("acid").map(Hazard.Corrosive::new).ifPresent(hazards::add);
    values.optionalText("energetic").map(Hazard.Energetic::new).ifPresent(hazards::add);
    if (section.has("biological")) {
      int group = values.count("biological");
      if (group > MOST_RISK_GROUP) {
        section.blame(
            "biological",
            new Problem(
                "risk-group-range",
                "risk group " + group,
                "",
                "runs from 1 to 4",
                "ask who assesses biological risk"));
      } else if (group > 0) {
        hazards.add(new Hazard.Biological(group));
      }
    }
    addIf(values.flag("azide"), new Hazard.Azide(), hazards);
    addIf(values.flag("toxic"), new Hazard.Toxic(), hazards);
    addIf(values.flag("food"), new Hazard.Food(), hazards);
    return hazards;
  }

  private static void addIf(boolean declared, Hazard hazard, List<Hazard> hazards) {
    if (declared) {
      hazards.add(hazard);
    }
  }

  private static Optional<Hazard> solvent(PlanSection section, Entry entry) {
    Matcher matcher = NAME_AND_SHARE.matcher(entry.text());
    try {
      if (matcher.matches()) {
        double share = Quantity.parse(matcher.group(2), QuantityKind.FRACTION).si();
        return Optional.of(new Hazard.Solvent(matcher.group(1), share));
      }
    } catch (QuantityFormatException | InvalidInputException e) {
      // said below
    }
    section.blame(
        entry,
        "not-a-solvent",
        "is no name with its share",
        "write for instance acetonitrile 30 %");
    return Optional.empty();
  }
}
