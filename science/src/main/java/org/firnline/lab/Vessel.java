package org.firnline.lab;

/** One container of product. */
public sealed interface Vessel permits Vial {

  /** What people call it, such as {@code 10R}. */
  String name();

  /**
   * The greatest liquid volume that leaves room for freezing and drying, m3.
   *
   * <p>Common practice, no published source: no more than half of the brimful volume.
   */
  double largestFill();
}
