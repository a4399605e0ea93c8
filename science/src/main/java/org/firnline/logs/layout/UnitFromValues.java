package org.firnline.logs.layout;

import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/**
 * Infers a unit the file does not write, from what a dryer can do: pressures start or end at the
 * atmosphere, temperatures stay between the collector and a warm shelf.
 */
final class UnitFromValues {
  private static final double ATMOSPHERE_LOW_PA = 80_000;

  /** A pressure that was pumped down falls below a third of where it began. */
  private static final double PUMPED = 1 / 3.0;

  private static final double ATMOSPHERE_HIGH_PA = 112_000;
  private static final String[] PRESSURE_UNITS = {"mbar", "Pa", "Torr", "mTorr", "kPa", "µbar"};

  private final UnitSpellings units;

  UnitFromValues(UnitSpellings units) {
    this.units = units;
  }

  /** The verdict with its unit: low confidence means that a person should be asked. */
  RoleVerdict find(RoleVerdict verdict, ColumnFacts facts, boolean pressure) {
    if (facts.values().isEmpty()) {
      return verdict;
    }
    ValueShape values = facts.values().get();
    double scale = facts.heading().scale();
    return pressure ? pressure(verdict, values, scale) : temperature(verdict, values, scale);
  }

  private RoleVerdict pressure(RoleVerdict verdict, ValueShape values, double scale) {
    for (String symbol : PRESSURE_UNITS) {
      ColumnUnit unit = unit(symbol, scale);
      double high = values.high() * unit.factor();
      boolean pumped = values.low() < PUMPED * values.high();
      if (pumped && high > ATMOSPHERE_LOW_PA && high < ATMOSPHERE_HIGH_PA) {
        return verdict.in(
            unit, Confidence.MEDIUM, "the highest value is the atmosphere if read in " + symbol);
      }
    }
    // Without an atmosphere in sight: working pressures of a dryer lie between 1 and 300 Pa.
    String symbol = values.median() * scale < 2.5 ? "mbar" : values.median() < 40 ? "Pa" : "mTorr";
    return verdict.in(
        unit(symbol, scale),
        Confidence.LOW,
        "no unit is written; the middle value is a usual working pressure if read in " + symbol);
  }

  private RoleVerdict temperature(RoleVerdict verdict, ValueShape values, double scale) {
    double low = values.low() * scale;
    double high = values.high() * scale;
    if (low > 150 && high < 400) {
      return verdict.in(unit("K", scale), Confidence.MEDIUM, "all values fit only kelvin");
    }
    if (low > -120 && high < 110) {
      return verdict.in(
          unit("°C", scale), Confidence.MEDIUM, "all values are usual in °C; none is written");
    }
    if (low >= -1200 && high <= 1100 && values.wholeNumbers() && scale == 1) {
      return verdict.in(
          unit("°C", 0.1), Confidence.LOW, "whole numbers this large are usual in tenths of °C");
    }
    return verdict.in(unit("°C", scale), Confidence.LOW, "no unit is written");
  }

  private ColumnUnit unit(String symbol, double scale) {
    Optional<ColumnUnit> found = units.find(symbol);
    ColumnUnit unit =
        found.orElseThrow(() -> new IllegalStateException("unit " + symbol + " is not shipped"));
    return new ColumnUnit("", unit.unit(), scale);
  }
}
