package org.firnline.drying.dryer;

import java.util.ArrayList;
import java.util.List;
import org.firnline.lab.Capability;
import org.firnline.lab.Collector;
import org.firnline.matter.WagnerEtAl2011Ice;

/**
 * The way of the vapor from the chamber onto the collector: the least of its limits decides.
 *
 * @param limits what bounds the flow; empty for a dryer that never limits
 * @param floor lowest chamber pressure the collector allows, the vapor pressure of its ice, Pa; 0
 *     where its temperature is unknown
 */
public record VaporPath(List<VaporLimit> limits, double floor) {

  /** A dryer that takes whatever the load gives. */
  public static final VaporPath UNLIMITED = new VaporPath(List.of(), 0);

  public VaporPath {
    limits = List.copyOf(limits);
    if (!(floor >= 0)) {
      throw new IllegalArgumentException("pressure floor " + floor + " is negative");
    }
  }

  /** The path of a dryer with this capability and collector. */
  public static VaporPath of(Capability capability, Collector collector) {
    double floor = floor(collector.temperature());
    List<VaporLimit> limits = new ArrayList<>();
    limits.add(
        capability.<VaporLimit>fold(
            duct -> VaporDuct.of(duct, floor),
            line -> new MeasuredLine(line.slope(), line.threshold())));
    if (Double.isFinite(collector.rate())) {
      limits.add(new CollectorRate(collector.rate()));
    }
    return new VaporPath(limits, floor);
  }

  /** Vapor pressure of ice at {@code collector_K}, Pa: no chamber goes below it for long. */
  public static double floor(double collector_K) {
    return new WagnerEtAl2011Ice().pressure(collector_K);
  }

  /** Greatest vapor flow at {@code pressure_Pa}, kg/s; 0 at and below the floor. */
  public double rate(double pressure_Pa) {
    if (pressure_Pa <= floor && floor > 0) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (VaporLimit limit : limits) {
      least = Math.min(least, limit.rate(pressure_Pa));
    }
    return least;
  }

  /**
   * As {@link #rate(double)} while the collector is warmer or colder than its usual self.
   *
   * @param behind_Pa vapor pressure of the collector's ice now; 0 or more
   */
  public double rate(double pressure_Pa, double behind_Pa) {
    if (pressure_Pa <= behind_Pa && behind_Pa > 0) {
      return 0;
    }
    double least = Double.POSITIVE_INFINITY;
    for (VaporLimit limit : limits) {
      least =
          Math.min(
              least,
              limit instanceof VaporDuct duct
                  ? duct.rate(pressure_Pa, behind_Pa)
                  : limit.rate(pressure_Pa));
    }
    return least;
  }

  /** What the dryer carries at {@code pressure_Pa}, with the part that limits it. */
  public CarriedVapor at(double pressure_Pa) {
    double rate = rate(pressure_Pa);
    if (rate == 0 && pressure_Pa <= floor) {
      return new CarriedVapor(0, VaporLimit.Part.COLLECTOR, false);
    }
    for (VaporLimit limit : limits) {
      if (limit.rate(pressure_Pa) == rate) {
        boolean subsonic = limit instanceof VaporDuct duct && duct.isSubsonic(pressure_Pa);
        return new CarriedVapor(rate, limit.part(), subsonic);
      }
    }
    return new CarriedVapor(rate, VaporLimit.Part.NOTHING, false);
  }
}
