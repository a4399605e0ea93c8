package org.firnline.logs;

import java.util.BitSet;
import java.util.Set;
import org.firnline.logs.channel.Series;
import org.firnline.logs.layout.ColumnUnit;

/**
 * Numbers that stand for "no sensor": outside what a dryer can have, or on the list of numbers that
 * loggers use for it and standing apart from their neighbors. Flagged, never dropped.
 *
 * <p>Source of the list: common practice, no published source.
 */
final class NumericSentinels {
  /** -200 °C to 200 °C: no thermometer of a dryer stands outside. */
  private static final double COLDEST_K = 73.15;

  private static final double WARMEST_K = 473.15;
  private static final double APART_K = 50;
  private static final double APART_FACTOR = 5;
  private static final double SMALLEST_KNOWN = 99;
  private static final Set<Double> KNOWN =
      Set.of(
          9999.0, 999.0, 999.9, 9999.9, 99999.0, -999.0, -999.9, -9999.0, -99.9, -99.99, 32767.0,
          -32768.0, 3276.7, -3276.8, 327.67, 6553.5, 65535.0, 850.0, 1372.0, 1800.0, -1.0, -200.0);

  /** Samples of a channel that stand for a broken or missing sensor. */
  BitSet find(Series series, ColumnUnit unit) {
    BitSet found = new BitSet();
    boolean temperature = unit.isTemperature();
    if (!temperature && !unit.isPressure()) {
      return found;
    }
    if (temperature && series.isWrittenWithin(-SMALLEST_KNOWN, SMALLEST_KNOWN)) {
      return found;
    }
    double before = Double.NaN;
    for (int i = 0; i < series.size(); i++) {
      double value = series.value(i);
      if (Double.isNaN(value)) {
        continue;
      }
      boolean outside = temperature && (value < COLDEST_K || value > WARMEST_K);
      double written = series.asWritten(i);
      boolean large = Math.abs(written) > SMALLEST_KNOWN || written == -1;
      boolean known = large && KNOWN.contains(written);
      if (outside || (known && standsApart(series, i, before, temperature))) {
        found.set(i);
      } else {
        before = value;
      }
    }
    return found;
  }

  /** Whether a listed number is far from the good values before and after it. */
  private static boolean standsApart(Series series, int i, double before, boolean temperature) {
    double written = series.asWritten(i);
    int next = i + 1;
    while (next < series.size()
        && (series.asWritten(next) == written || Double.isNaN(series.value(next)))) {
      next++;
    }
    double after = next < series.size() ? series.value(next) : before;
    double value = series.value(i);
    boolean lead = Double.isNaN(before) || isFar(value, before, temperature);
    boolean trail = Double.isNaN(after) || isFar(value, after, temperature);
    boolean alone = Double.isNaN(before) && Double.isNaN(after);
    return lead && trail && !alone;
  }

  private static boolean isFar(double value, double neighbor, boolean temperature) {
    return temperature
        ? Math.abs(value - neighbor) > APART_K
        : value < 0 || value > APART_FACTOR * neighbor;
  }
}
