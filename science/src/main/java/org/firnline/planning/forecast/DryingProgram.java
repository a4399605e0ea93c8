package org.firnline.planning.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.firnline.drying.recipe.Track;

/**
 * The settings of primary drying over time: legs one after the other, the last one for as long as
 * it takes.
 *
 * @param shelfStart shelf temperature at the start, K; positive
 * @param ramp rate at which the shelf goes from leg to leg, K/s; positive
 * @param legs at least one
 */
public record DryingProgram(double shelfStart, double ramp, List<Leg> legs) {

  /**
   * One setting, ramp into it included.
   *
   * @param shelf_K shelf temperature
   * @param pressure_Pa chamber pressure; empty where the dryer leaves it to float
   * @param duration_s ramp and hold; positive, infinite for the last
   */
  public record Leg(double shelf_K, OptionalDouble pressure_Pa, double duration_s) {

    public Leg {
      if (!(shelf_K > 0) || !(duration_s > 0) || !(pressure_Pa.orElse(1) > 0)) {
        throw new IllegalArgumentException(
            "shelf " + shelf_K + " K, duration " + duration_s + " s and pressure must be positive");
      }
    }
  }

  public DryingProgram {
    legs = List.copyOf(legs);
    if (legs.isEmpty() || !(shelfStart > 0) || !(ramp > 0)) {
      throw new IllegalArgumentException("a program needs legs, a start and a ramp");
    }
  }

  /** One setting for ever, the shelf already there. */
  public static DryingProgram hold(double shelf_K, double pressure_Pa) {
    return new DryingProgram(
        shelf_K,
        1,
        List.of(new Leg(shelf_K, OptionalDouble.of(pressure_Pa), Double.POSITIVE_INFINITY)));
  }

  /** Nothing to set: what a manifold in room air does. */
  public static DryingProgram floating(double shelf_K) {
    return new DryingProgram(
        shelf_K, 1, List.of(new Leg(shelf_K, OptionalDouble.empty(), Double.POSITIVE_INFINITY)));
  }

  /** When each leg begins, s. */
  double[] starts() {
    double[] starts = new double[legs.size()];
    for (int leg = 1; leg < starts.length; leg++) {
      starts[leg] = starts[leg - 1] + legs.get(leg - 1).duration_s();
    }
    return starts;
  }

  /** The shelf over time; a ramp longer than its leg goes on from where the next begins. */
  Track shelf() {
    List<Track.Point> points = new ArrayList<>();
    double now = shelfStart;
    double time = 0;
    points.add(new Track.Point(0, now));
    for (Leg leg : legs) {
      double wayTime = Math.abs(leg.shelf_K() - now) / ramp;
      double end = Math.min(wayTime, leg.duration_s());
      now = wayTime > end ? now + (leg.shelf_K() - now) * end / wayTime : leg.shelf_K();
      points.add(new Track.Point(time + end, now));
      time += leg.duration_s();
      if (Double.isFinite(time)) {
        points.add(new Track.Point(time, now));
      }
    }
    return Track.through(points);
  }
}
