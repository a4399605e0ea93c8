package org.firnline.planning.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.FastFront;
import org.firnline.lab.Dryer;
import org.firnline.lab.Range;
import org.firnline.planning.forecast.DryingProgram;
import org.firnline.planning.forecast.LoadForecaster;
import org.firnline.planning.forecast.SampledLoad;
import org.firnline.units.Unit;

/**
 * Moves the shelf of every step until the drawn runs just keep the accepted risk, then rounds to
 * what a person types and confirms.
 *
 * <p>At constant settings the product's distance from the coldest ice possible is nearly a fixed
 * share of the shelf's, which says how far to move the shelf; three rounds settle it.
 */
final class StepTuner {

  private static final int ROUNDS = 3;
  private static final int MOST_LOWERINGS = 24;
  private static final double SHELF_STEP_K = 0.5;
  private static final double LARGEST_MOVE_K = 15;
  private static final double LEAST_GAIN = 1;
  private static final double MOST_GAIN = 8;
  private static final Unit CELSIUS = Unit.parse("°C");

  private final LoadForecaster forecaster;
  private final Range shelves;
  private final double risk;

  StepTuner(LoadForecaster forecaster, double risk) {
    Dryer dryer = forecaster.sharing().dryer();
    this.forecaster = forecaster;
    this.shelves = dryer.shelfTemperature();
    this.risk = risk;
  }

  /**
   * A program with what the forecast says of it.
   *
   * @param program its settings
   * @param sampled the drawn runs
   */
  record Tried(DryingProgram program, SampledLoad sampled) {

    double time() {
      return sampled.lastTime();
    }
  }

  Tried attempt(DryingProgram program) {
    return new Tried(program, forecaster.run(program));
  }

  boolean keeps(Tried tried) {
    return tried.sampled().overheatingRisk() <= risk && tried.sampled().pressureRisk() <= risk;
  }

  /** The program with its shelves moved to the accepted risk, not rounded. */
  Tried settle(DryingProgram program, int rounds) {
    Tried now = attempt(program);
    for (int round = 0; round < rounds; round++) {
      now = attempt(moved(now));
    }
    return now;
  }

  /** Tuned, rounded and confirmed; empty where even the coldest shelf is too risky. */
  Optional<Tried> tune(DryingProgram program) {
    Tried settled = settle(program, ROUNDS);
    Tried typed = attempt(typed(settled.program()));
    for (int lowering = 0; lowering < MOST_LOWERINGS && !keeps(typed); lowering++) {
      if (isColdest(typed.program())) {
        return Optional.empty();
      }
      typed = attempt(lowered(typed));
    }
    return keeps(typed) ? Optional.of(polished(typed)) : Optional.empty();
  }

  /** Half a kelvin warmer wherever the risk still allows it. */
  private Tried polished(Tried typed) {
    Tried best = typed;
    for (int leg = 0; leg < typed.program().legs().size(); leg++) {
      Tried warmer = attempt(with(best.program(), leg, SHELF_STEP_K));
      if (keeps(warmer) && warmer.time() < best.time()) {
        best = warmer;
      }
    }
    return best;
  }

  private DryingProgram moved(Tried tried) {
    List<DryingProgram.Leg> legs = new ArrayList<>();
    for (int leg = 0; leg < tried.program().legs().size(); leg++) {
      DryingProgram.Leg now = tried.program().legs().get(leg);
      legs.add(at(now, now.shelf_K() + move(tried, leg)));
    }
    return new DryingProgram(tried.program().shelfStart(), tried.program().ramp(), legs);
  }

  /** How far the shelf of one leg should move, K. */
  private double move(Tried tried, int leg) {
    DryingProgram.Leg now = tried.program().legs().get(leg);
    double excess = tried.sampled().legExcess(leg, 1 - risk);
    if (excess == Double.NEGATIVE_INFINITY) {
      return 0;
    }
    double coldest = FastFront.coldest(now.pressure_Pa().orElse(1));
    double shelfRise = now.shelf_K() - coldest;
    double limit = limit();
    double gain =
        Math.max(LEAST_GAIN, Math.min(MOST_GAIN, shelfRise / Math.max(1, limit - coldest)));
    double byProduct = -gain * excess;
    double load = tried.sampled().legLoad(leg, 1 - risk);
    double byDryer = load > 0 ? (1 / Math.min(load, 4) - 1) * Math.max(1, shelfRise) : byProduct;
    double move = load >= 1 || byProduct > 0 ? Math.min(byProduct, byDryer) : byProduct;
    return Math.max(-LARGEST_MOVE_K, Math.min(LARGEST_MOVE_K, move));
  }

  /** Critical temperature of the most delicate item, K. */
  private double limit() {
    return forecaster.sharing().load().portions().stream()
        .mapToDouble(portion -> portion.item().product().critical().temperature().best())
        .min()
        .orElseThrow();
  }

  private DryingProgram lowered(Tried tried) {
    List<DryingProgram.Leg> legs = new ArrayList<>();
    double worst = Double.NEGATIVE_INFINITY;
    int count = tried.program().legs().size();
    for (int leg = 0; leg < count; leg++) {
      worst = Math.max(worst, tried.sampled().legExcess(leg, 1 - risk));
    }
    boolean byPressure = tried.sampled().pressureRisk() > risk;
    for (int leg = 0; leg < count; leg++) {
      DryingProgram.Leg now = tried.program().legs().get(leg);
      boolean worstByProduct =
          tried.sampled().overheatingRisk() > risk
              && tried.sampled().legExcess(leg, 1 - risk) >= worst - SHELF_STEP_K;
      boolean overDryer = byPressure && tried.sampled().legLoad(leg, 1 - risk) >= 1;
      boolean lower = worstByProduct || overDryer;
      legs.add(at(now, now.shelf_K() - (lower ? SHELF_STEP_K : 0)));
    }
    return new DryingProgram(tried.program().shelfStart(), tried.program().ramp(), legs);
  }

  private boolean isColdest(DryingProgram program) {
    return program.legs().stream().allMatch(leg -> leg.shelf_K() <= shelves.low());
  }

  private DryingProgram with(DryingProgram program, int which, double shift_K) {
    List<DryingProgram.Leg> legs = new ArrayList<>(program.legs());
    legs.set(which, at(legs.get(which), legs.get(which).shelf_K() + shift_K));
    return new DryingProgram(program.shelfStart(), program.ramp(), legs);
  }

  /** Every shelf rounded down to what a person types. */
  private DryingProgram typed(DryingProgram program) {
    return new DryingProgram(
        program.shelfStart(),
        program.ramp(),
        program.legs().stream().map(leg -> at(leg, typed(leg.shelf_K()))).toList());
  }

  static double typed(double shelf_K) {
    double celsius = CELSIUS.fromSi(shelf_K) / SHELF_STEP_K;
    return CELSIUS.toSi(Math.floor(celsius + 1e-6) * SHELF_STEP_K);
  }

  private DryingProgram.Leg at(DryingProgram.Leg leg, double shelf_K) {
    return new DryingProgram.Leg(shelves.nearest(shelf_K), leg.pressure_Pa(), leg.duration_s());
  }
}
