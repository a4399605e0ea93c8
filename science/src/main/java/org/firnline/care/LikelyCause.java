package org.firnline.care;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What most often makes these figures change together. Common practice, no published source; a
 * cause is a place to look first, not a verdict.
 */
public enum LikelyCause {
  /** Slower down and not so low any more, gauges agree: worn vanes or old oil. */
  PUMP_WEARS(EnumSet.of(CareFigure.PUMP_DOWN), EnumSet.of(CareFigure.LEAK_RISE)),
  /** The empty chamber rises faster. */
  LEAK(EnumSet.of(CareFigure.LEAK_RISE), EnumSet.noneOf(CareFigure.class)),
  /** The two gauges part in dry gas. */
  GAUGE_DRIFTS(EnumSet.of(CareFigure.GAUGE_AGREEMENT), EnumSet.noneOf(CareFigure.class)),
  /** The collector cools later or less: refrigerant, condenser fan, frost, a hot room. */
  REFRIGERATION_WEAKENS(EnumSet.of(CareFigure.COLLECTOR_COOLING), EnumSet.noneOf(CareFigure.class)),
  /** The same, seen at its coldest. */
  REFRIGERATION_NOT_SO_COLD(
      EnumSet.of(CareFigure.COLLECTOR_COLDEST), EnumSet.noneOf(CareFigure.class)),
  /** The lowest pressure rose and the pump is as fast as ever: wet oil, a small leak, a gauge. */
  WET_OIL_OR_SMALL_LEAK(
      EnumSet.of(CareFigure.ULTIMATE_PRESSURE),
      EnumSet.of(CareFigure.PUMP_DOWN, CareFigure.LEAK_RISE)),
  /** The shelf wanders about its set point. */
  SHELF_CONTROL(EnumSet.of(CareFigure.SHELF_TRACKING), EnumSet.noneOf(CareFigure.class)),
  /** The ratio in vapor changed while the gauges agree when dry. */
  GAUGE_FOULED(EnumSet.of(CareFigure.VAPOR_RATIO), EnumSet.of(CareFigure.GAUGE_AGREEMENT));

  private final Set<CareFigure> changed;
  private final Set<CareFigure> unchanged;

  LikelyCause(Set<CareFigure> changed, Set<CareFigure> unchanged) {
    this.changed = changed;
    this.unchanged = unchanged;
  }

  /** Its stable name for programs and bundles. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The figures that speak for it. */
  public Set<CareFigure> figures() {
    return EnumSet.copyOf(changed);
  }

  /** The causes that fit a set of figures that changed for the worse. */
  public static List<LikelyCause> of(Set<CareFigure> worse) {
    List<LikelyCause> causes = new ArrayList<>();
    for (LikelyCause cause : values()) {
      boolean speaks = worse.containsAll(cause.changed);
      boolean silent = cause.unchanged.stream().noneMatch(worse::contains);
      if (speaks && silent) {
        causes.add(cause);
      }
    }
    return List.copyOf(causes);
  }
}
