package org.firnline.app.words;

import org.firnline.units.Figures;
import org.firnline.units.QuantityKind;
import org.firnline.units.Unit;

/** SI values as people at a dryer read them: the unit of the trade, sensible digits. */
public final class Quantities {
  /** Stands between a number and its unit. */
  static final String THIN = "\u202f";

  private static final Unit CELSIUS = Unit.parse("°C");
  private static final Unit MILLIMETER = Unit.parse("mm");
  private static final Unit MILLILITER = Unit.parse("mL");
  private static final Unit KELVIN_PER_MINUTE = Unit.parse("K/min");
  private static final Unit GRAM = Unit.parse("g");
  private static final Unit GRAM_PER_HOUR = Unit.parse("g/h");
  private static final Unit SQUARE_CENTIMETER = Unit.parse("cm2");
  private static final double SQUARE_METER_FROM = 0.1;
  private static final int PERCENT = 100;
  private static final double KILOGRAM = 1;

  private Quantities() {}

  /** "−31.0 °C", "1.8 K", "8.0 Pa", "43 %", "230 g", "21 g/h", "7.4 mm". */
  public static String words(double si, QuantityKind kind) {
    return switch (kind) {
      case TEMPERATURE -> Figures.decimals(CELSIUS.fromSi(si), 1) + THIN + "°C";
      case TEMPERATURE_DIFFERENCE -> Figures.decimals(si, 1) + THIN + "K";
      case PRESSURE -> Figures.significant(si, 2) + THIN + "Pa";
      case FRACTION -> percent(si);
      case LENGTH -> Figures.significant(MILLIMETER.differenceFromSi(si), 2) + THIN + "mm";
      case AREA -> area(si);
      case NUMBER -> Figures.significant(si, 2);
      case TIME -> Shown.duration(si);
      case MASS -> mass(si);
      case VOLUME -> Figures.significant(MILLILITER.differenceFromSi(si), 2) + THIN + "mL";
      case TEMPERATURE_RATE ->
          Figures.significant(KELVIN_PER_MINUTE.differenceFromSi(si), 2) + THIN + "K/min";
      case MASS_FLOW -> Figures.significant(GRAM_PER_HOUR.differenceFromSi(si), 2) + THIN + "g/h";
      default -> Figures.significant(si, 3) + THIN + kind.siUnit();
    };
  }

  /** The same text with ordinary spaces, for terminals. */
  public static String plain(String text) {
    return text.replace(THIN, " ");
  }

  private static String area(double si) {
    return si >= SQUARE_METER_FROM
        ? Figures.significant(si, 2) + THIN + "m²"
        : Figures.significant(SQUARE_CENTIMETER.differenceFromSi(si), 2) + THIN + "cm²";
  }

  private static String mass(double si) {
    return si >= KILOGRAM
        ? Figures.significant(si, 2) + THIN + "kg"
        : Figures.significant(GRAM.differenceFromSi(si), 2) + THIN + "g";
  }

  private static String percent(double share) {
    double percent = share * PERCENT;
    if (percent > 0 && percent < 1) {
      return "<" + THIN + "1" + THIN + "%";
    }
    return Figures.decimals(percent, 0) + THIN + "%";
  }
}
