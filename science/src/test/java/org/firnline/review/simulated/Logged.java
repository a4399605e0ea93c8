package org.firnline.review.simulated;

import java.util.EnumSet;
import java.util.Set;
import org.firnline.drying.cycle.LoggedChannel.Kind;

/** What a simulated dryer writes down. */
enum Logged {
  EVERYTHING(EnumSet.complementOf(EnumSet.of(Kind.VAPOR_RATE)), 3),
  NO_SET_POINTS(
      EnumSet.of(
          Kind.SHELF, Kind.CAPACITANCE_GAUGE, Kind.THERMAL_GAUGE, Kind.PRODUCT, Kind.COLLECTOR),
      2),
  ONE_GAUGE(EnumSet.of(Kind.SHELF_SET_POINT, Kind.SHELF, Kind.CAPACITANCE_GAUGE, Kind.PRODUCT), 2),
  GAUGES_ONLY(EnumSet.of(Kind.CAPACITANCE_GAUGE, Kind.THERMAL_GAUGE), 0),
  GAUGES_AND_SHELF(EnumSet.of(Kind.SHELF, Kind.CAPACITANCE_GAUGE, Kind.THERMAL_GAUGE), 0),
  THERMOMETERS_ONLY(EnumSet.of(Kind.SHELF, Kind.PRODUCT), 3),
  VAPOR_RATE_TOO(EnumSet.allOf(Kind.class), 1),
  ONE_CHANNEL(EnumSet.of(Kind.PRODUCT), 1);

  private final Set<Kind> kinds;
  private final int thermometers;

  Logged(Set<Kind> kinds, int thermometers) {
    this.kinds = kinds;
    this.thermometers = thermometers;
  }

  Set<Kind> kinds() {
    return kinds;
  }

  int thermometers() {
    return thermometers;
  }

  boolean hasBothGauges() {
    return kinds.contains(Kind.CAPACITANCE_GAUGE) && kinds.contains(Kind.THERMAL_GAUGE);
  }

  boolean hasPressure() {
    return kinds.contains(Kind.CAPACITANCE_GAUGE) || kinds.contains(Kind.THERMAL_GAUGE);
  }
}
