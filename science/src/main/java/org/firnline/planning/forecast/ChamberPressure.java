package org.firnline.planning.forecast;

import java.util.function.DoubleUnaryOperator;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.matter.Water;

/**
 * The chamber pressure at which a load and a dryer meet: the set point while the dryer carries the
 * vapor there, else the first higher pressure at which it does; without control the pressure that
 * follows from the one before, coming down from above at pump-down.
 *
 * <p>The readable form with every root is {@code PressureMeeting}; this one keeps to the branch it
 * is on.
 */
final class ChamberPressure {

  private static final double STEP = 1.1;
  private static final double ACCURACY = 1e-6;
  private static final double LOWEST_PA = 0.01;

  private final VaporPath path;
  private double floating = Water.TRIPLE_POINT_PRESSURE;

  ChamberPressure(VaporPath path) {
    this.path = path;
  }

  /** The pressure of a dryer that holds {@code setPoint_Pa}; NaN if it carries the load nowhere. */
  double held(double setPoint_Pa, DoubleUnaryOperator load) {
    double from = Math.max(setPoint_Pa, path.floor() * (1 + 1e-9));
    if (from > Water.TRIPLE_POINT_PRESSURE) {
      return Double.NaN;
    }
    return excess(from, load) <= 0 ? from : upward(from, load);
  }

  /** The pressure of a dryer without control; NaN if it carries the load nowhere. */
  double floating(DoubleUnaryOperator load) {
    if (excess(floating, load) > 0) {
      double up = upward(floating, load);
      floating = Double.isNaN(up) ? Water.TRIPLE_POINT_PRESSURE : up;
      return up;
    }
    double high = floating;
    double least = Math.max(LOWEST_PA, path.floor() * (1 + 1e-9));
    while (high > least) {
      double low = Math.max(least, high / STEP);
      if (excess(low, load) > 0) {
        floating = between(low, high, load);
        return floating;
      }
      high = low;
    }
    floating = least;
    return floating;
  }

  private double upward(double from, DoubleUnaryOperator load) {
    double low = from;
    while (low < Water.TRIPLE_POINT_PRESSURE) {
      double high = Math.min(Water.TRIPLE_POINT_PRESSURE, low * STEP);
      if (excess(high, load) <= 0) {
        return between(low, high, load);
      }
      low = high;
    }
    return Double.NaN;
  }

  /** By the Illinois form of the secant rule; the dryer carries the load at {@code high}. */
  private double between(double low, double high, DoubleUnaryOperator load) {
    double left = low;
    double right = high;
    double atLeft = excess(left, load);
    double atRight = excess(right, load);
    while (right - left > ACCURACY * right && atRight < 0) {
      double next = right - atRight * (right - left) / (atRight - atLeft);
      double value = excess(next, load);
      if (value > 0) {
        left = next;
        atLeft = value;
        atRight /= 2;
      } else {
        boolean near = right - next < ACCURACY * right;
        right = next;
        atRight = value;
        atLeft /= 2;
        if (near) {
          break;
        }
      }
    }
    return right;
  }

  private double excess(double pressure_Pa, DoubleUnaryOperator load) {
    return load.applyAsDouble(pressure_Pa) - path.rate(pressure_Pa);
  }
}
