package org.firnline.planning.ask;

import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.matter.Water;

/** Refuses impossible answers to the few questions, in words that say what would be right. */
final class Given {

  private static final double COLDEST_ICE_K = 130;
  private static final double WARMEST_ICE_K = Water.TRIPLE_POINT_TEMPERATURE;

  private Given() {}

  static void positive(double value, String name, String unit) {
    that(
        value > 0 && Double.isFinite(value),
        name,
        name + " " + value + " " + unit,
        "must be above 0",
        "give a positive " + name);
  }

  static void ice(double value_K, String name) {
    that(
        value_K >= COLDEST_ICE_K && value_K <= WARMEST_ICE_K,
        name,
        name + " " + value_K + " K",
        "must be that of ice, between " + COLDEST_ICE_K + " K and " + WARMEST_ICE_K + " K",
        "give for instance -30 °C");
  }

  static void that(boolean holds, String name, String what, String rule, String advice) {
    if (!holds) {
      throw new InvalidInputException(new Problem("ask-range", what, name, rule, advice));
    }
  }
}
