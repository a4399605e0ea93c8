package org.firnline.app.planfile;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.firnline.app.planfile.PlanWishes.AnnealingWish;
import org.firnline.app.planfile.PlanWishes.MoistureWish;
import org.firnline.evidence.Problem;
import org.firnline.units.QuantityKind;

/** Reads what a person wants of the recipe. */
final class WishReader {
  private static final int MOST_STEPS = 12;

  /** Triple point of water, K: ice annealed there would melt. */
  private static final double MELTING_K = 273.16;

  private final PlanSection section;
  private final int dryerSteps;

  /**
   * Beside a dryer whose programmer takes {@code dryerSteps} steps of primary drying; 0 after a
   * problem.
   */
  WishReader(PlanSection top, int dryerSteps) {
    this.section = top.section("wishes", PlanKeys.in("wishes"));
    this.dryerSteps = dryerSteps;
  }

  Optional<PlanWishes> read() {
    PlanValues values = new PlanValues(section);
    double risk = values.number("risk", QuantityKind.FRACTION);
    if (!Double.isNaN(risk) && !(risk > 0 && risk < 1)) {
      refuse("risk", "must lie above 0 and below 100 %", "write for instance 5 %");
    }
    int steps = section.has("steps") ? values.count("steps") : dryerSteps;
    if (steps > MOST_STEPS) {
      refuse("steps", "is more than can be planned", "use at most " + MOST_STEPS);
    }
    Optional<AnnealingWish> annealing = section.has("annealing") ? annealing() : Optional.empty();
    Optional<MoistureWish> secondary = section.has("secondary") ? secondary() : Optional.empty();
    boolean usable = risk > 0 && risk < 1 && steps >= 1 && steps <= MOST_STEPS;
    return usable
        ? Optional.of(new PlanWishes(risk, steps, annealing, secondary))
        : Optional.empty();
  }

  private Optional<AnnealingWish> annealing() {
    PlanSection below = section.section("annealing", PlanKeys.in("wishes.annealing"));
    PlanValues values = new PlanValues(below);
    double shelf = values.number("temperature", QuantityKind.TEMPERATURE);
    double hold = values.number("hold", QuantityKind.TIME);
    if (shelf >= MELTING_K) {
      below.blame("temperature", refusal("would melt the ice", "stay below 0 °C"));
    } else if (hold <= 0) {
      below.blame("hold", refusal("must be above 0", "write for instance 3 h"));
    } else if (!Double.isNaN(shelf + hold)) {
      return Optional.of(new AnnealingWish(shelf, hold));
    }
    return Optional.empty();
  }

  private Optional<MoistureWish> secondary() {
    PlanSection below = section.section("secondary", PlanKeys.in("wishes.secondary"));
    PlanValues values = new PlanValues(below);
    double[] read = {
      values.number("target", QuantityKind.FRACTION),
      values.number("temperature", QuantityKind.TEMPERATURE),
      values.number("wettest", QuantityKind.FRACTION),
      values.number("equilibrium", QuantityKind.FRACTION),
      values.number("rate", QuantityKind.PER_TIME),
      values.number("activation", QuantityKind.MOLAR_ENERGY),
      values.number("dry_glass_transition", QuantityKind.TEMPERATURE),
      values.number("glass_constant", QuantityKind.NUMBER),
      values.number("margin", QuantityKind.TEMPERATURE_DIFFERENCE)
    };
    if (DoubleStream.of(read).anyMatch(Double::isNaN)) {
      return Optional.empty();
    }
    if (read[0] <= read[3]) {
      below.blame(
          "target",
          refusal(
              "is not above what stays for ever", "wish for more, or dry at a lower equilibrium"));
      return Optional.empty();
    }
    if (!(read[4] > 0) || !(read[7] > 0) || read[8] < 0 || read[5] < 0 || read[2] < 0) {
      below.blame("target", refusal("goes with values below zero", "check the signs beside it"));
      return Optional.empty();
    }
    return Optional.of(
        new MoistureWish(
            read[0], read[1], read[2], read[3], read[4], read[5], read[6], read[7], read[8]));
  }

  private void refuse(String key, String rule, String advice) {
    section.blame(key, refusal(rule, advice));
  }

  private static Problem refusal(String rule, String advice) {
    return new Problem("wish-range", "the wish", "", rule, advice);
  }
}
