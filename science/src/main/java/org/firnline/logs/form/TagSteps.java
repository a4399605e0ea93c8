package org.firnline.logs.form;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** How often the tags of a long table come again, in the unit of the table's own times. */
final class TagSteps {
  private static final int ENOUGH = 20_000;

  private final Map<String, Double> last = new HashMap<>();
  private final double[] steps = new double[ENOUGH];
  private int count;

  /** Takes the time of a tag's next value; NaN is passed over. */
  void take(String tag, double moment) {
    if (Double.isNaN(moment) || count == ENOUGH) {
      return;
    }
    Double before = last.put(tag, moment);
    if (before != null && moment > before) {
      steps[count++] = moment - before;
    }
  }

  /** Half of the usual step: values farther apart are no one row. Infinite if none is known. */
  double halfAStep() {
    if (count == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double[] sorted = Arrays.copyOf(steps, count);
    Arrays.sort(sorted);
    return sorted[count / 2] / 2;
  }
}
