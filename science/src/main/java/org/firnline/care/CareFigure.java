package org.firnline.care;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A figure of a dryer's health that one run gives. */
public enum CareFigure {
  /** From the start of cooling until the collector is near its coldest, s. */
  COLLECTOR_COOLING("s", Worse.HIGHER),
  /** Coldest temperature of the collector, K. */
  COLLECTOR_COLDEST("K", Worse.HIGHER),
  /** From the start of the pump until the chamber first falls below 100 Pa, s. */
  PUMP_DOWN("s", Worse.HIGHER),
  /** Volume pumped per time between 5000 and 500 Pa, as a share of the chamber volume, 1/s. */
  PUMPING_RATE("1/s", Worse.LOWER),
  /** Lowest chamber pressure while the pump runs unregulated or at its best, Pa. */
  ULTIMATE_PRESSURE("Pa", Worse.HIGHER),
  /** Thermal over capacitance gauge when the chamber is dry, 1. */
  GAUGE_AGREEMENT("1", Worse.EITHER),
  /** Thermal over capacitance gauge in vapor, 1. */
  VAPOR_RATIO("1", Worse.EITHER),
  /** Root mean square of shelf minus set point once settled, K. */
  SHELF_TRACKING("K", Worse.HIGHER),
  /** Pressure rise of the empty, isolated chamber, Pa/s. */
  LEAK_RISE("Pa/s", Worse.HIGHER);

  /** Which way it goes when something fails. */
  public enum Worse {
    HIGHER,
    LOWER,
    EITHER
  }

  private final String unit;
  private final Worse worse;

  CareFigure(String unit, Worse worse) {
    this.unit = unit;
    this.worse = worse;
  }

  /** Its SI unit. */
  public String unit() {
    return unit;
  }

  /** Which way it goes when something fails. */
  public Worse worse() {
    return worse;
  }

  /** Its stable name for programs and bundles, such as "pump-down". */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The figure of that name. */
  public static Optional<CareFigure> find(String label) {
    return Arrays.stream(values()).filter(figure -> figure.label().equals(label)).findFirst();
  }
}
