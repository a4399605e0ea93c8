package org.firnline.drying.load;

import java.util.List;
import java.util.OptionalDouble;
import org.firnline.matter.Water;

/** The one chamber pressure of a load whose groups have dried to given depths. */
final class SharedPressure {

  private final LoadFronts fronts;
  private final LoadSettings settings;
  private double pressure;
  private double totalRate;
  private boolean overloaded;

  SharedPressure(LoadFronts fronts, LoadSettings settings) {
    this.fronts = fronts;
    this.settings = settings;
  }

  /** Finds the pressure and leaves the fronts solved at it. */
  void solve(double[] depths, boolean[] running) {
    OptionalDouble found = find(depths, running);
    overloaded = found.isEmpty();
    pressure = found.orElse(Water.TRIPLE_POINT_PRESSURE);
    totalRate = fronts.totalRate(depths, running, pressure);
  }

  /**
   * As {@link #solve} for depths a little further on: follows the meeting it was at, and looks for
   * every other one only where that has gone.
   */
  void follow(double[] depths, boolean[] running) {
    PressureMeeting meeting = meeting(depths, running);
    OptionalDouble followed = overloaded ? OptionalDouble.empty() : followed(meeting);
    if (followed.isEmpty()) {
      solve(depths, running);
      return;
    }
    pressure = followed.getAsDouble();
    totalRate = fronts.totalRate(depths, running, pressure);
  }

  private OptionalDouble followed(PressureMeeting meeting) {
    if (settings.pressure() instanceof PressureControl.Held held) {
      double lowest = meeting.floored(held.setPoint());
      if (meeting.carries(lowest)) {
        return OptionalDouble.of(lowest);
      }
      return pressure > lowest ? meeting.near(pressure) : OptionalDouble.empty();
    }
    return meeting.near(pressure);
  }

  /** Every pressure at which load and dryer would meet. */
  List<PressureRoot> roots(double[] depths, boolean[] running) {
    return meeting(depths, running).roots();
  }

  private OptionalDouble find(double[] depths, boolean[] running) {
    PressureMeeting meeting = meeting(depths, running);
    return settings.pressure() instanceof PressureControl.Held held
        ? meeting.held(held.setPoint())
        : meeting.floating();
  }

  private PressureMeeting meeting(double[] depths, boolean[] running) {
    return new PressureMeeting(at -> fronts.totalRate(depths, running, at), settings.path());
  }

  /** Chamber pressure of the last solution, Pa. */
  double pressure() {
    return pressure;
  }

  /** Vapor of the whole load in the last solution, kg/s. */
  double totalRate() {
    return totalRate;
  }

  /** Whether the dryer carries the load at no pressure below the triple point. */
  boolean overloaded() {
    return overloaded;
  }
}
