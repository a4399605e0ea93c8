package org.firnline.drying.cycle;

import java.util.Arrays;

/** What is worth telling about each vessel afterwards, in plain arrays. */
final class VesselRecords {

  final double[] nucleatedAt;
  final double[] endOfIce;
  final double[] warmestIce;
  final double[] limitPassedAt;
  final double[] glassMargin;
  final double[] glassMarginAt;

  VesselRecords(int size) {
    nucleatedAt = filled(size, Double.POSITIVE_INFINITY);
    endOfIce = filled(size, Double.POSITIVE_INFINITY);
    warmestIce = filled(size, 0);
    limitPassedAt = filled(size, Double.POSITIVE_INFINITY);
    glassMargin = filled(size, Double.POSITIVE_INFINITY);
    glassMarginAt = filled(size, Double.POSITIVE_INFINITY);
  }

  void seeGlass(int i, double margin_K, double time_s) {
    if (margin_K < glassMargin[i]) {
      glassMargin[i] = margin_K;
      glassMarginAt[i] = time_s;
    }
  }

  private static double[] filled(int size, double value) {
    double[] array = new double[size];
    Arrays.fill(array, value);
    return array;
  }
}
