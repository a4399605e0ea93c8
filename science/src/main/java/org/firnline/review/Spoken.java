package org.firnline.review;

import java.util.Locale;
import org.firnline.units.Figures;
import org.firnline.units.Unit;

/** Numbers as a person at the dryer says them. */
final class Spoken {
  private static final Unit CELSIUS = Unit.parse("°C");

  private Spoken() {}

  /** A temperature given in K. */
  static String temperature(double kelvin) {
    return Figures.decimals(CELSIUS.fromSi(kelvin), 1) + " °C";
  }

  /** A temperature difference given in K. */
  static String kelvin(double difference_K) {
    return Figures.decimals(difference_K, 1) + " K";
  }

  /** A pressure given in Pa. */
  static String pressure(double pascal) {
    double mbar = pascal / 100;
    return String.format(Locale.ROOT, "%s mbar (%s Pa)", digits(mbar), digits(pascal));
  }

  /** A length of time given in seconds. */
  static String duration(double seconds) {
    if (seconds < 90) {
      return String.format(Locale.ROOT, "%.0f s", seconds);
    }
    return seconds < 5400
        ? String.format(Locale.ROOT, "%.0f min", seconds / 60)
        : String.format(Locale.ROOT, "%.1f h", seconds / 3600);
  }

  /** A moment given in seconds after the start of the log. */
  static String into(double seconds) {
    return duration(seconds) + " into the log";
  }

  /** Three significant digits without an exponent where it can be helped. */
  static String digits(double value) {
    if (value == 0) {
      return "0";
    }
    int places = (int) Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
    return String.format(Locale.ROOT, "%." + Math.min(places, 8) + "f", value);
  }
}
