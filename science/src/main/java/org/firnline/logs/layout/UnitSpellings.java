package org.firnline.logs.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firnline.logs.text.CellWords;
import org.firnline.units.Unit;

/** Units as logs spell them, with scalings such as "x10-3 mbar" or "0.1 °C". */
public final class UnitSpellings {
  private static final Pattern SCALED =
      Pattern.compile(
          "(?:[x×*]\\s*)?(\\d+(?:[.,]\\d+)?(?:[eE][+-]?\\d+)?)(?:\\^?([+-]\\d+))?\\s*(\\D.*)?");

  private final Map<String, Unit> units = new HashMap<>();

  /** Reads the shipped table of spellings. */
  public UnitSpellings() {
    for (List<String> row : CellWords.rows(UnitSpellings.class, "units.csv")) {
      units.put(row.get(0), Unit.parse(row.get(1)));
    }
  }

  /** The unit behind a spelling without any scaling; empty if it is none. */
  Optional<ColumnUnit> findPlain(String written) {
    String text = strip(written);
    return plain(text).map(unit -> new ColumnUnit(text, unit, 1));
  }

  /** The unit behind a spelling, brackets around it allowed; empty if it is none. */
  public Optional<ColumnUnit> find(String written) {
    String text = strip(written);
    return plain(text).map(unit -> new ColumnUnit(text, unit, 1)).or(() -> scaled(text));
  }

  private Optional<Unit> plain(String text) {
    String lower =
        text.toLowerCase(Locale.ROOT).replace('º', '°').replace('μ', 'µ').replaceAll("\\s+", " ");
    Unit unit = units.get(lower);
    if (unit == null && lower.startsWith("° ")) {
      unit = units.get("°" + lower.substring(2));
    }
    return Optional.ofNullable(unit);
  }

  private Optional<ColumnUnit> scaled(String text) {
    Matcher matcher = SCALED.matcher(text);
    if (!matcher.matches() || matcher.group(3) == null) {
      return Optional.empty();
    }
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    String power = matcher.group(2);
    double factor = power == null ? number : Math.pow(number, Integer.parseInt(power));
    // Loggers scale by tens; any other number is part of a name, such as "Product 2 °C".
    boolean tens = factor > 0 && Math.log10(factor) == Math.rint(Math.log10(factor));
    return plain(strip(matcher.group(3)))
        .filter(unit -> tens)
        .map(unit -> new ColumnUnit(text, unit, asScale(factor)));
  }

  /** A factor above one says how the logger multiplied; below one, what a count is worth. */
  static double asScale(double factor) {
    return factor > 1 ? 1 / factor : factor;
  }

  private static String strip(String written) {
    String text = written.strip();
    while (text.length() > 1 && isBracketed(text)) {
      text = text.substring(1, text.length() - 1).strip();
    }
    return text.startsWith("in ") ? text.substring(3).strip() : text;
  }

  private static boolean isBracketed(String text) {
    String pair = "" + text.charAt(0) + text.charAt(text.length() - 1);
    return pair.equals("[]") || pair.equals("()") || pair.equals("{}");
  }
}
