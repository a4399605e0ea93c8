package org.firnline.drying.primary;

/** Guards inputs that nouns of the lab have already made plausible. */
final class Positive {

  private Positive() {}

  static void require(double value, String name) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " " + value + " is not positive");
    }
  }
}
