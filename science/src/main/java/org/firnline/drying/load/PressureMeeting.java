package org.firnline.drying.load;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.matter.Water;
import org.firnline.numerics.Peak;
import org.firnline.numerics.Root;

/**
 * Where a load and a dryer meet: the pressures at which the vapor given off equals the vapor
 * carried away. Up to three are common, because heat transfer grows with pressure while a
 * collector's rate does not.
 *
 * <p>Looks at pressures in even steps of their logarithm and closes in on sign changes and on near
 * misses between them.
 *
 * <p>Valid: from 0.001 Pa (or the collector's floor) to the triple point.
 */
final class PressureMeeting {

  private static final double LOWEST_PA = 1e-3;
  private static final double STEP = 1.2;
  private static final double JUST_ABOVE = 1 + 1e-12;

  /** A difference that turns back within this share of what the dryer carries may hide roots. */
  private static final double NEAR_MISS = 0.3;

  /** Share of the pressure within which a meeting is the one that is followed. */
  private static final double NEAR = 0.25;

  private static final double FIRST_SECANT = 1e-3;
  private static final double SETTLED = 1e-10;
  private static final int MOST_SECANTS = 8;

  private final DoubleUnaryOperator load;
  private final VaporPath path;

  /**
   * @param load vapor given off at a pressure in Pa, kg/s
   */
  PressureMeeting(DoubleUnaryOperator load, VaporPath path) {
    this.load = load;
    this.path = path;
  }

  /** Every pressure at which load and dryer meet, rising. */
  List<PressureRoot> roots() {
    return crossings(lowest(), Integer.MAX_VALUE);
  }

  /**
   * The chamber pressure of a dryer that holds {@code setPoint_Pa}: the first pressure from there
   * up at which it carries the load; empty if there is none below the triple point.
   */
  OptionalDouble held(double setPoint_Pa) {
    double from = floored(setPoint_Pa);
    if (from > Water.TRIPLE_POINT_PRESSURE) {
      return OptionalDouble.empty();
    }
    if (excess(from) <= 0) {
      return OptionalDouble.of(from);
    }
    return crossings(from, 1).stream().mapToDouble(PressureRoot::pressure).findFirst();
  }

  /**
   * The chamber pressure of a dryer without control: the highest root, which is reached from above
   * at pump-down; the lowest pressure looked at if the dryer carries the load everywhere; empty if
   * it does not carry it at the triple point.
   */
  OptionalDouble floating() {
    if (excess(Water.TRIPLE_POINT_PRESSURE) > 0) {
      return OptionalDouble.empty();
    }
    List<PressureRoot> roots = roots();
    return OptionalDouble.of(roots.isEmpty() ? lowest() : roots.get(roots.size() - 1).pressure());
  }

  /**
   * The stable meeting next to {@code guess_Pa}, where load − capability falls through 0, by the
   * secant rule; empty if there is none within a quarter of it.
   */
  OptionalDouble near(double guess_Pa) {
    double before = guess_Pa;
    double atBefore = excess(before);
    double now = guess_Pa * (1 + FIRST_SECANT);
    for (int secant = 0; secant < MOST_SECANTS; secant++) {
      if (now > Water.TRIPLE_POINT_PRESSURE || Math.abs(now - guess_Pa) > NEAR * guess_Pa) {
        return OptionalDouble.empty();
      }
      double atNow = excess(now);
      double slope = (atNow - atBefore) / (now - before);
      if (!(slope < 0)) {
        return OptionalDouble.empty();
      }
      double next = now - atNow / slope;
      if (Math.abs(next - now) < SETTLED * now) {
        return OptionalDouble.of(next);
      }
      before = now;
      atBefore = atNow;
      now = next;
    }
    return OptionalDouble.empty();
  }

  /** Whether the dryer carries the load at {@code pressure_Pa}. */
  boolean carries(double pressure_Pa) {
    return excess(pressure_Pa) <= 0;
  }

  /**
   * The lowest pressure of a dryer that is to hold {@code setPoint_Pa}: its floor may be higher.
   */
  double floored(double setPoint_Pa) {
    return Math.max(setPoint_Pa, path.floor() * JUST_ABOVE);
  }

  private double lowest() {
    return Math.max(LOWEST_PA, path.floor() * JUST_ABOVE);
  }

  /** What the load gives off beyond what the dryer carries, kg/s. */
  private double excess(double pressure_Pa) {
    double carried = path.rate(pressure_Pa);
    return Double.isInfinite(carried)
        ? -Double.MAX_VALUE
        : load.applyAsDouble(pressure_Pa) - carried;
  }

  /** Rising, from {@code from} up until {@code enough} are found. */
  private List<PressureRoot> crossings(double from, int enough) {
    List<PressureRoot> found = new ArrayList<>();
    double low = from;
    double atLow = excess(low);
    double before = low;
    double atBefore = atLow;
    while (low < Water.TRIPLE_POINT_PRESSURE && found.size() < enough) {
      double high = Math.min(low * STEP, Water.TRIPLE_POINT_PRESSURE);
      double atHigh = excess(high);
      if (nearlyTouches(atBefore, atLow, atHigh, low) && before < low) {
        addHiddenPair(found, before, high, atLow > 0);
      }
      if (atLow > 0 != atHigh > 0) {
        found.add(new PressureRoot(Root.find(this::excess, low, high), atLow > 0));
      }
      before = low;
      atBefore = atLow;
      low = high;
      atLow = atHigh;
    }
    return List.copyOf(found);
  }

  private boolean nearlyTouches(double atBefore, double middle, double atHigh, double pressure_Pa) {
    double sign = Math.signum(middle);
    return sign * middle <= sign * atBefore
        && sign * middle <= sign * atHigh
        && sign * middle < NEAR_MISS * path.rate(pressure_Pa);
  }

  private void addHiddenPair(
      List<PressureRoot> found, double before, double high, boolean positive) {
    double sign = positive ? 1 : -1;
    double turned = Peak.location(pressure -> -sign * excess(pressure), before, high);
    if (sign * excess(turned) < 0) {
      found.add(new PressureRoot(Root.find(this::excess, before, turned), positive));
      found.add(new PressureRoot(Root.find(this::excess, turned, high), !positive));
    }
  }
}
