package org.firnline.logs.channel;

/**
 * The samples of one channel, immutable. A sample that is not {@link Quality#GOOD} reads as NaN and
 * keeps the number the file wrote, so that no flag destroys evidence.
 */
public interface Series {

  /** Number of samples, equal to the size of the log's time axis. */
  int size();

  /** SI value of a sample, NaN unless its quality is good. */
  double value(int index);

  /** What the file says about a sample. */
  Quality quality(int index);

  /**
   * The number the file wrote, in the file's own unit, whatever its quality; NaN if it wrote none.
   * For an over- or under-range sample this is the limit if the file names it.
   */
  double asWritten(int index);

  /** A fresh copy of all SI values, NaN where the quality is not good. */
  default double[] toArray() {
    double[] values = new double[size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = value(i);
    }
    return values;
  }

  /** Number of samples with a good value. */
  default int goodCount() {
    int good = 0;
    for (int i = 0; i < size(); i++) {
      if (quality(i) == Quality.GOOD) {
        good++;
      }
    }
    return good;
  }
}
