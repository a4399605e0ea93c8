package org.firnline.drying.load;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.firnline.drying.dryer.VaporPath;

/**
 * A load frozen in time: every group dried to a given depth, shelf constant. Answers what the load
 * would give off at any chamber pressure, and where it meets a dryer.
 */
public final class LoadMoment {

  private final LoadFronts fronts;
  private final double[] depths;
  private final boolean[] running;

  private LoadMoment(DryingLoad load, double shelf_K, double[] depths) {
    this.fronts = new LoadFronts(load, shelf_K);
    this.depths = depths;
    this.running = new boolean[depths.length];
    Arrays.fill(running, true);
  }

  /** The first moment of drying. */
  public static LoadMoment start(DryingLoad load, double shelf_K) {
    return new LoadMoment(load, shelf_K, new double[load.groups().size()]);
  }

  /** Every vessel with {@code fraction} of its ice gone. */
  public static LoadMoment dried(DryingLoad load, double shelf_K, double fraction) {
    double[] depths =
        load.groups().stream()
            .mapToDouble(group -> group.vessel().geometry().depthAtDriedFraction(fraction))
            .toArray();
    return new LoadMoment(load, shelf_K, depths);
  }

  /** Vapor of the whole load at {@code pressure_Pa}, kg/s. */
  public double totalRate(double pressure_Pa) {
    return fronts.totalRate(depths, running, pressure_Pa);
  }

  /** Warmest frozen point of any vessel at {@code pressure_Pa}, K. */
  public double warmest(double pressure_Pa) {
    fronts.totalRate(depths, running, pressure_Pa);
    return fronts.warmest(running);
  }

  /** Every pressure at which the load meets the dryer, rising. */
  public List<PressureRoot> roots(VaporPath path) {
    return new PressureMeeting(this::totalRate, path).roots();
  }

  /**
   * Chamber pressure under {@code control}, Pa; empty if the dryer carries the load at no pressure
   * below the triple point.
   */
  public OptionalDouble pressure(PressureControl control, VaporPath path) {
    var meeting = new PressureMeeting(this::totalRate, path);
    return control instanceof PressureControl.Held held
        ? meeting.held(held.setPoint())
        : meeting.floating();
  }
}
