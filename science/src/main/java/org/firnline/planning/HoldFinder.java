package org.firnline.planning;

import java.util.Optional;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.evidence.Band;
import org.firnline.lab.Dryer;
import org.firnline.lab.Range;
import org.firnline.numerics.Normal;
import org.firnline.numerics.Threshold;
import org.firnline.units.Unit;

/**
 * The fastest hold that keeps its limits: the warmest vessel below its critical temperature at the
 * accepted risk, the load's vapor within what the dryer carries, both with their doubt, and the
 * settings within the dryer's ranges.
 *
 * <p>At each pressure the warmest admissible shelf is the fastest; the pressures in reach are tried
 * evenly spaced in their logarithm. The answer is rounded to what a person types and confirmed
 * after rounding.
 */
final class HoldFinder {

  /** Accepted probability that the warmest vessel exceeds its critical temperature. */
  static final double ACCEPTED_RISK = 0.05;

  static final double ACCEPTED_DEVIATIONS = Normal.quantile(1 - ACCEPTED_RISK);

  private static final int PRESSURES = 25;
  private static final double SHELF_STEP_K = 0.5;
  private static final double PRESSURE_STEP_PA = 0.5;
  private static final Unit CELSIUS = Unit.parse("°C");

  private final Dryer dryer;
  private final LoadForecast forecast;
  private final VaporPath path;

  HoldFinder(Dryer dryer, LoadForecast forecast) {
    this.dryer = dryer;
    this.forecast = forecast;
    this.path = VaporPath.of(dryer.capability(), dryer.collector());
  }

  /** The fastest admissible hold; empty where none exists. */
  Optional<Hold> find() {
    Optional<Hold> fastest = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < PRESSURES; i++) {
      Optional<Hold> candidate = warmestAt(pressure(i)).map(this::typed);
      if (candidate.isEmpty() || !admissible(candidate.get())) {
        continue;
      }
      double time = forecast.time(forecast.typical(), candidate.get());
      if (time < least) {
        least = time;
        fastest = candidate;
      }
    }
    return fastest;
  }

  /** The warmest admissible shelf at {@code pressure_Pa}. */
  private Optional<Hold> warmestAt(double pressure_Pa) {
    Range shelf = dryer.shelfTemperature();
    if (!admissible(new Hold(shelf.low(), pressure_Pa))) {
      return Optional.empty();
    }
    if (admissible(new Hold(shelf.high(), pressure_Pa))) {
      return Optional.of(new Hold(shelf.high(), pressure_Pa));
    }
    double first =
        Threshold.within(
            shelf_K -> !admissible(new Hold(shelf_K, pressure_Pa)),
            shelf.low(),
            shelf.high(),
            SHELF_STEP_K / 8);
    return Optional.of(new Hold(first, pressure_Pa));
  }

  boolean admissible(Hold hold) {
    return forecast.warmest(hold).excess(ACCEPTED_DEVIATIONS) <= 0 && carried(hold);
  }

  private boolean carried(Hold hold) {
    Band rate = forecast.peakRate(hold);
    return rate.high() <= path.rate(hold.pressure_Pa());
  }

  private double pressure(int index) {
    Range range = dryer.pressure();
    double low = Math.max(range.low(), path.floor());
    double high = Math.max(low, range.high());
    return low * Math.pow(high / low, index / (double) (PRESSURES - 1));
  }

  /** The settings as typed at the dryer: shelf rounded down, pressure to the nearest step. */
  private Hold typed(Hold hold) {
    double celsius = Math.floor(CELSIUS.fromSi(hold.shelf_K()) / SHELF_STEP_K) * SHELF_STEP_K;
    double shelf = dryer.shelfTemperature().nearest(CELSIUS.toSi(celsius));
    double pressure = Math.round(hold.pressure_Pa() / PRESSURE_STEP_PA) * PRESSURE_STEP_PA;
    Hold rounded = new Hold(shelf, dryer.pressure().nearest(pressure));
    Hold colder =
        new Hold(dryer.shelfTemperature().nearest(shelf - SHELF_STEP_K), rounded.pressure_Pa());
    return admissible(rounded) ? rounded : colder;
  }
}
