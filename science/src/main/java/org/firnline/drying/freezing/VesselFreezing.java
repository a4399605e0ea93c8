package org.firnline.drying.freezing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.firnline.drying.recipe.Track;

/**
 * Freezing of one vessel on a shelf whose temperature changes along straight lines.
 *
 * <p>Stages: the liquid cools as one mass; at the nucleation temperature ice appears and warms the
 * rest to the freezing point at once; a front moves up from the bottom (one-sided Plank); the
 * frozen mass cools as one, with a third of the layer's resistance in its way.
 *
 * <p>Assumes one freezing point for all ice, no sensible heat of the ice behind the moving front (6
 * % of the latent heat at 20 K), no heat from above. Thawing is not followed: a front may step back
 * while the shelf is warm, but product that was frozen through must stay frozen.
 *
 * <p>Valid: layers up to about 2 cm on a shelf at atmospheric pressure.
 *
 * <p>Source: closed forms of each stage, derivation in docs/science.md; front by Plank as in {@link
 * Plank1913}.
 */
public final class VesselFreezing {

  /**
   * The course along a shelf program.
   *
   * @param shelf shelf temperature over time, K
   * @param start_K product temperature at time 0, above {@code nucleation_K}
   * @param nucleation_K temperature at which ice appears, at most the freezing point
   * @param times at which states are wanted, s; rising, none negative, at least one
   */
  public FreezingCourse course(
      FreezingVessel vessel, Track shelf, double start_K, double nucleation_K, List<Double> times) {
    requireOrder(vessel, start_K, nucleation_K, times);
    Recorder recorder = new Recorder(vessel, nucleation_K, FreezingState.liquid(start_K));
    double[] wanted = times.stream().mapToDouble(Double::doubleValue).toArray();
    double end = wanted[wanted.length - 1];
    double[] stops =
        DoubleStream.concat(DoubleStream.of(wanted), DoubleStream.of(shelf.bends()))
            .filter(time -> time >= 0 && time <= end)
            .sorted()
            .distinct()
            .toArray();
    double now = 0;
    List<FreezingMoment> moments = new ArrayList<>(wanted.length);
    for (double stop : stops) {
      recorder.advance(now, stop, shelf);
      now = stop;
      if (Arrays.binarySearch(wanted, stop) >= 0) {
        moments.add(recorder.state.moment(vessel, stop, shelf.at(stop)));
      }
    }
    return new FreezingCourse(moments, recorder.nucleation, recorder.frozen);
  }

  private static void requireOrder(
      FreezingVessel vessel, double start_K, double nucleation_K, List<Double> times) {
    if (!(nucleation_K <= vessel.freezingPoint()) || !(start_K > nucleation_K)) {
      throw new IllegalArgumentException(
          "start "
              + start_K
              + " K, freezing point "
              + vessel.freezingPoint()
              + " K and nucleation "
              + nucleation_K
              + " K are out of order");
    }
    if (times.isEmpty() || !(times.get(0) >= 0)) {
      throw new IllegalArgumentException("times must begin at 0 or later");
    }
    for (int i = 1; i < times.size(); i++) {
      if (!(times.get(i) > times.get(i - 1))) {
        throw new IllegalArgumentException("time " + times.get(i) + " s is out of order");
      }
    }
  }

  /** Carries one vessel along and notes when its stages end. */
  private static final class Recorder {

    private final FreezingVessel vessel;
    private final double nucleation_K;
    private FreezingState state;
    private OptionalDouble nucleation = OptionalDouble.empty();
    private OptionalDouble frozen = OptionalDouble.empty();

    Recorder(FreezingVessel vessel, double nucleation_K, FreezingState state) {
      this.vessel = vessel;
      this.nucleation_K = nucleation_K;
      this.state = state;
    }

    void advance(double from, double to, Track shelf) {
      double slope = to > from ? slope(from, to, shelf) : 0;
      double now = from;
      while (now < to) {
        var line = new FreezingState.Shelf(shelf.at(from) + slope * (now - from), slope);
        var step = state.advanced(vessel, nucleation_K, line, to - now);
        boolean stays = step.state().stage() == state.stage();
        now = stays ? to : now + step.time();
        note(step.state().stage(), now);
        state = step.state();
      }
    }

    private void note(FreezingMoment.Stage reached, double time) {
      if (reached != FreezingMoment.Stage.LIQUID && nucleation.isEmpty()) {
        nucleation = OptionalDouble.of(time);
      }
      if (reached == FreezingMoment.Stage.FROZEN && frozen.isEmpty()) {
        frozen = OptionalDouble.of(time);
      }
    }

    /** From the middle, so that a step at the end does not count. */
    private static double slope(double from, double to, Track shelf) {
      double middle = (from + to) / 2;
      return (shelf.at(middle) - shelf.at(from)) / (middle - from);
    }
  }
}
