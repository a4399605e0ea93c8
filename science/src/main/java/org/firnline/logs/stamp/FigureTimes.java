package org.firnline.logs.stamp;

import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/**
 * What times in figures mean.
 *
 * @param kind an absolute time or one counted from the start
 * @param rule in words
 * @param millisPerUnit milliseconds in one unit
 * @param zeroMillis UTC (or local, for serials) milliseconds at zero
 * @param confidence how sure
 */
public record FigureTimes(
    Kind kind, String rule, double millisPerUnit, double zeroMillis, Confidence confidence) {
  private static final double DAY_MS = 86_400_000;
  private static final double SERIAL_ZERO_1900 = -25_569 * DAY_MS;

  /** What sort of time the figures are. */
  public enum Kind {
    EPOCH,
    /** Days of a spreadsheet's calendar, in local time. */
    SERIAL,
    ELAPSED
  }

  public FigureTimes {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(confidence, "confidence");
  }

  /**
   * Judges figures by their size and unit.
   *
   * @param figures times as written, in file order
   * @param unit_s seconds in the written unit; empty if none is written
   * @param unitWord the unit as written, for the rule
   * @param interval_s sampling interval the file names; empty if none
   */
  public static FigureTimes judge(
      double[] figures, Optional<Double> unit_s, String unitWord, Optional<Double> interval_s) {
    double first = figures.length == 0 ? 0 : figures[0];
    double size = Math.abs(first);
    if (size > 5e8 && size < 5e9) {
      return new FigureTimes(Kind.EPOCH, "epoch seconds", 1000, 0, Confidence.HIGH);
    }
    if (size > 5e11 && size < 5e12) {
      return new FigureTimes(Kind.EPOCH, "epoch milliseconds", 1, 0, Confidence.HIGH);
    }
    if (size > 5e14 && size < 5e15) {
      return new FigureTimes(Kind.EPOCH, "epoch microseconds", 1e-3, 0, Confidence.HIGH);
    }
    if (size > 5e17) {
      return new FigureTimes(Kind.EPOCH, "epoch nanoseconds", 1e-6, 0, Confidence.HIGH);
    }
    if (unit_s.isPresent()) {
      return new FigureTimes(
          Kind.ELAPSED, "elapsed " + unitWord, unit_s.get() * 1000, 0, Confidence.HIGH);
    }
    if (size > 30_000 && size < 80_000 && hasSmallSteps(figures)) {
      return new FigureTimes(
          Kind.SERIAL,
          "spreadsheet serial days, 1900 system",
          DAY_MS,
          SERIAL_ZERO_1900,
          Confidence.MEDIUM);
    }
    return elapsedWithoutUnit(figures, interval_s);
  }

  private static boolean hasSmallSteps(double[] figures) {
    for (int i = 1; i < Math.min(figures.length, 100); i++) {
      if (Math.abs(figures[i] - figures[i - 1]) > 0.5) {
        return false;
      }
    }
    return true;
  }

  private static FigureTimes elapsedWithoutUnit(double[] figures, Optional<Double> interval_s) {
    double step = figures.length > 1 ? figures[1] - figures[0] : 1;
    if (interval_s.isPresent() && step > 0) {
      return new FigureTimes(
          Kind.ELAPSED,
          "elapsed, in units that give the interval the file names",
          interval_s.get() / step * 1000,
          0,
          Confidence.MEDIUM);
    }
    return new FigureTimes(Kind.ELAPSED, "elapsed seconds", 1000, 0, Confidence.LOW);
  }

  /** Milliseconds of all figures. */
  public long[] toMillis(double[] figures) {
    long[] millis = new long[figures.length];
    for (int i = 0; i < millis.length; i++) {
      millis[i] = Math.round(figures[i] * millisPerUnit + zeroMillis);
    }
    return millis;
  }
}
