package org.firnline.planning.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.lab.Dryer;
import org.firnline.lab.Range;
import org.firnline.numerics.Normal;
import org.firnline.planning.design.StepTuner.Tried;
import org.firnline.planning.forecast.AdmissiblePath;
import org.firnline.planning.forecast.DryingProgram;
import org.firnline.planning.forecast.LoadForecaster;

/**
 * Finds programs of primary drying on a dryer with shelves and pressure control: the ideal, the
 * best with at most N steps, the best hold.
 */
final class PrimaryDesigner {

  private static final int PRESSURES = 12;
  private static final double PRESSURE_STEP_PA = 0.5;
  private static final double DURATION_STEP_S = 600;
  private static final int OFFSET_ROUNDS = 2;

  private final LoadForecaster forecaster;
  private final DesignWishes wishes;
  private final StepTuner tuner;
  private final double shelfStart;
  private final double ramp;
  private final double[] pressures;
  private final Range shelves;

  PrimaryDesigner(LoadForecaster forecaster, DesignWishes wishes, double shelfStart, double ramp) {
    this.forecaster = forecaster;
    this.wishes = wishes;
    this.tuner = new StepTuner(forecaster, wishes.risk());
    this.shelfStart = shelfStart;
    this.ramp = ramp;
    this.shelves = forecaster.sharing().dryer().shelfTemperature();
    this.pressures = pressures(forecaster.sharing().dryer());
  }

  /** Pressures the control accepts, evenly spaced in their logarithm and as a person types them. */
  private static double[] pressures(Dryer dryer) {
    Range range = dryer.pressure();
    double floor = VaporPath.floor(dryer.collector().temperature()) * 1.01;
    double low = Math.min(range.high(), Math.max(range.low(), floor));
    return IntStream.range(0, PRESSURES)
        .mapToDouble(i -> low * Math.pow(range.high() / low, i / (PRESSURES - 1.0)))
        .map(pressure -> Math.ceil(pressure / PRESSURE_STEP_PA) * PRESSURE_STEP_PA)
        .map(range::nearest)
        .distinct()
        .toArray();
  }

  /**
   * What was found.
   *
   * @param ideal the ideal as a program of many legs; empty where nothing is admissible
   * @param hold the best hold; empty where none keeps the risk
   * @param designed the best program of at most N steps; empty where none keeps the risk
   */
  record Found(Optional<Tried> ideal, Optional<Tried> hold, Optional<Tried> designed) {}

  Found find() {
    double offset = firstOffset();
    AdmissiblePath path = path(offset);
    for (int round = 0; round < OFFSET_ROUNDS && path.exists(); round++) {
      offset += tuner.attempt(ideal(path)).sampled().excess(1 - wishes.risk());
      path = path(offset);
    }
    if (!path.exists()) {
      return new Found(Optional.empty(), coldestHold(), coldestHold());
    }
    StepCutter cutter = new StepCutter(path, pressures);
    Optional<Tried> hold = bestHold(cutter);
    List<Tried> candidates = new ArrayList<>();
    hold.ifPresent(candidates::add);
    for (int steps = 2; steps <= wishes.mostSteps(); steps++) {
      tuned(cutter.cut(steps)).ifPresent(candidates::add);
    }
    Tried ideal = tuner.attempt(ideal(path));
    return new Found(
        Optional.of(ideal), hold, candidates.stream().min(Comparator.comparing(Tried::time)));
  }

  /** The hold cut from the path, and those at the neighboring pressures. */
  private Optional<Tried> bestHold(StepCutter cutter) {
    List<DryingProgram.Leg> legs = cutter.cut(1);
    if (legs.isEmpty()) {
      return coldestHold();
    }
    int at = index(legs.get(0).pressure_Pa().orElseThrow());
    return IntStream.rangeClosed(Math.max(0, at - 1), Math.min(pressures.length - 1, at + 1))
        .mapToObj(
            i ->
                tuned(
                    List.of(
                        new DryingProgram.Leg(
                            legs.get(0).shelf_K(),
                            OptionalDouble.of(pressures[i]),
                            Double.POSITIVE_INFINITY))))
        .flatMap(Optional::stream)
        .min(Comparator.comparing(Tried::time));
  }

  private int index(double pressure_Pa) {
    int found = 0;
    for (int i = 0; i < pressures.length; i++) {
      if (pressures[i] == pressure_Pa) {
        found = i;
      }
    }
    return found;
  }

  /** The mildest the dryer can do, if even that keeps the risk. */
  private Optional<Tried> coldestHold() {
    Tried tried =
        tuner.attempt(
            program(
                List.of(
                    new DryingProgram.Leg(
                        shelves.low(),
                        OptionalDouble.of(pressures[0]),
                        Double.POSITIVE_INFINITY))));
    return tuner.keeps(tried) && Double.isFinite(tried.time())
        ? Optional.of(tried)
        : Optional.empty();
  }

  private Optional<Tried> tuned(List<DryingProgram.Leg> legs) {
    return legs.isEmpty() ? Optional.empty() : tuner.tune(program(rounded(legs)));
  }

  /** Durations to ten minutes; the first leg gets its ramp on top. */
  private List<DryingProgram.Leg> rounded(List<DryingProgram.Leg> legs) {
    List<DryingProgram.Leg> typed = new ArrayList<>();
    double before = shelfStart;
    for (DryingProgram.Leg leg : legs) {
      double way = Math.abs(leg.shelf_K() - before) / ramp;
      double lasts = typed.isEmpty() ? leg.duration_s() + way / 2 : leg.duration_s();
      double whole = Math.max(way, Math.rint(lasts / DURATION_STEP_S) * DURATION_STEP_S);
      typed.add(
          new DryingProgram.Leg(
              leg.shelf_K(), leg.pressure_Pa(), Math.max(DURATION_STEP_S, whole)));
      before = leg.shelf_K();
    }
    return typed;
  }

  private DryingProgram ideal(AdmissiblePath path) {
    List<DryingProgram.Leg> legs = new ArrayList<>();
    for (int node = 0; node < AdmissiblePath.NODES; node++) {
      double lasts = path.time(node + 1) - path.time(node);
      boolean last = node == AdmissiblePath.NODES - 1;
      legs.add(
          new DryingProgram.Leg(
              Math.min(path.shelf(node), path.shelf(node + 1)),
              OptionalDouble.of(path.pressure(node)),
              last ? Double.POSITIVE_INFINITY : lasts));
    }
    double first = Math.abs(legs.get(0).shelf_K() - shelfStart) / ramp;
    DryingProgram.Leg leg = legs.get(0);
    legs.set(
        0, new DryingProgram.Leg(leg.shelf_K(), leg.pressure_Pa(), leg.duration_s() + first / 2));
    return program(legs);
  }

  private DryingProgram program(List<DryingProgram.Leg> legs) {
    return new DryingProgram(shelfStart, ramp, legs);
  }

  private AdmissiblePath path(double offset) {
    double spread = forecaster.heatSpread();
    double carried = Math.exp(-deviates() * spread);
    return AdmissiblePath.of(
        forecaster, shelves, pressures, new AdmissiblePath.Demand(Math.max(0, offset), carried));
  }

  private double firstOffset() {
    return deviates() * forecaster.criticalSpread();
  }

  private double deviates() {
    return Normal.quantile(1 - wishes.risk());
  }
}
