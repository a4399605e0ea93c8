package org.firnline.planning.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.firnline.lab.Dryer;
import org.firnline.lab.Flask;
import org.firnline.lab.Hazard;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Portion;
import org.firnline.lab.Tray;
import org.firnline.planning.Figure;
import org.firnline.planning.Verdict;
import org.firnline.planning.caution.Caution.Topic;
import org.firnline.units.QuantityKind;

/**
 * Looks through a load for what was declared and what its vessels imply.
 *
 * <p>Source: usual cautions of safety pages for laboratories, hazards H1 to H20 of the manual;
 * thresholds as stated beside them.
 *
 * @param load everything that dries together
 * @param dryer on which machine
 * @param pressure chamber pressure, Pa; positive
 * @param duration of the whole run, s; may be infinite
 */
public record CautionList(Load load, Dryer dryer, double pressure, double duration) {

  /**
   * Round-bottom or thin flasks above this size should not be evacuated. Source: a laboratory
   * safety magazine (2011) (found).
   */
  private static final double LARGE_FLASK_M3 = 1e-3;

  /** A slope nobody sees, rad: one degree. */
  private static final double UNSEEN_SLOPE = Math.PI / 180;

  /** One end a tenth deeper is worth leveling; an assumption. */
  private static final double UNEVEN_SHARE = 0.1;

  /**
   * Below this critical temperature a bench dryer has hardly a setting left, K (−40 °C). High salt
   * and high sugar are listed as poor candidates for drying (a maker of home dryers, found).
   */
  private static final double SOFT_K = 233.15;

  /** Longer than a working day, s. */
  private static final double WORKING_DAY_S = 8 * 3600;

  /** Every reminder, gravest first. */
  public List<Caution> lines() {
    List<Caution> lines = new ArrayList<>();
    for (Portion portion : load.portions()) {
      vessel(portion, lines);
      softness(portion, lines);
      HazardCautions hazards = new HazardCautions(portion.owner(), dryer, pressure);
      portion.hazards().stream().map(hazards::of).forEach(lines::add);
    }
    neighbors(lines);
    whole(lines);
    lines.sort(Comparator.comparing(Caution::verdict).reversed());
    return List.copyOf(lines);
  }

  private void vessel(Portion portion, List<Caution> lines) {
    LoadItem item = portion.item();
    if (item.vessel() instanceof Flask flask) {
      Verdict verdict = flask.volume() > LARGE_FLASK_M3 ? Verdict.STOP : Verdict.WATCH;
      lines.add(
          line(
              Topic.GLASS,
              verdict,
              portion.owner(),
              flask.name(),
              new Figure("volume", flask.volume(), QuantityKind.VOLUME)));
      lines.add(line(Topic.CRYOGEN, Verdict.WATCH, portion.owner(), flask.name()));
    }
    if (item.vessel() instanceof Tray tray) {
      double difference = tray.length() * Math.tan(UNSEEN_SLOPE);
      Verdict verdict =
          difference / 2 > UNEVEN_SHARE * item.frozenDepth() ? Verdict.WATCH : Verdict.PASS;
      lines.add(
          line(
              Topic.TRAY_LEVEL,
              verdict,
              portion.owner(),
              tray.name(),
              new Figure("difference", difference, QuantityKind.LENGTH),
              new Figure("depth", item.frozenDepth(), QuantityKind.LENGTH)));
    }
  }

  private static void softness(Portion portion, List<Caution> lines) {
    double critical = portion.item().product().critical().temperature().best();
    if (critical < SOFT_K) {
      lines.add(
          line(
              Topic.SOFT_PRODUCT,
              Verdict.WATCH,
              portion.owner(),
              portion.item().product().name(),
              new Figure("critical", critical, QuantityKind.TEMPERATURE)));
    }
  }

  private void neighbors(List<Caution> lines) {
    if (load.mixesFoodWithOthers()) {
      lines.add(line(Topic.FOOD_BESIDE_OTHERS, Verdict.STOP, "", ""));
    }
    if (load.portions().stream().map(Portion::owner).distinct().count() < 2) {
      return;
    }
    for (Portion portion : load.portions()) {
      if (portion.hazards().stream().anyMatch(CautionList::leavesWithTheVapor)) {
        lines.add(
            line(
                Topic.VAPOR_REACHES_OTHERS,
                Verdict.WATCH,
                portion.owner(),
                portion.item().product().name()));
      }
    }
  }

  private static boolean leavesWithTheVapor(Hazard hazard) {
    return hazard instanceof Hazard.Solvent || hazard instanceof Hazard.Corrosive;
  }

  private void whole(List<Caution> lines) {
    if (dryer.shelves().isPresent()) {
      lines.add(line(Topic.BACKFILL, Verdict.PASS, "", ""));
    }
    if (duration > WORKING_DAY_S) {
      lines.add(
          line(
              Topic.UNATTENDED,
              Verdict.WATCH,
              "",
              "",
              new Figure("duration", duration, QuantityKind.TIME)));
    }
  }

  static Caution line(Topic topic, Verdict verdict, String owner, String about, Figure... figures) {
    return new Caution(topic, verdict, owner, about, Stream.of(figures).toList());
  }
}
