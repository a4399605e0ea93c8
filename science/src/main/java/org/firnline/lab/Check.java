package org.firnline.lab;

import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.units.Figures;

/** Refuses impossible values at the door of a record, in words that say what would be right. */
final class Check {

  private static final int MESSAGE_DIGITS = 3;

  private Check() {}

  static void positive(double value, String name, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      refuse(
          "not-positive", name, value + " " + unit, "must be above 0", "give a positive " + name);
    }
  }

  static void notNegative(double value, String name, String unit) {
    if (!(value >= 0) || Double.isNaN(value)) {
      refuse(
          "negative",
          name,
          value + " " + unit,
          "must be 0 or more",
          "give 0 or a positive " + name);
    }
  }

  static void finite(double value, String name, String unit) {
    that(
        Double.isFinite(value),
        "not-finite",
        name,
        name + " " + value + " " + unit,
        "must be a finite number",
        "give a " + name);
  }

  static void named(String name, String noun) {
    that(!name.isBlank(), "no-name", noun, "the " + noun + " is blank", "needs one", "type a name");
  }

  /** A volume for a message. */
  static String milliliters(double volume_m3) {
    return Figures.significant(volume_m3 * 1e6, MESSAGE_DIGITS) + " mL";
  }

  /** A length for a message. */
  static String millimeters(double length_m) {
    return Figures.significant(length_m * 1e3, MESSAGE_DIGITS) + " mm";
  }

  static void that(
      boolean holds, String code, String name, String what, String rule, String advice) {
    if (!holds) {
      throw new InvalidInputException(new Problem(code, what, name, rule, advice));
    }
  }

  private static void refuse(String code, String name, String value, String rule, String advice) {
    throw new InvalidInputException(new Problem(code, name + " " + value, name, rule, advice));
  }
}
