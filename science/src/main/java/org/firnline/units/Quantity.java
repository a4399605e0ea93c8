package org.firnline.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with a meaning, as read from a person or a file.
 *
 * @param si the value in the SI unit of {@code kind}; finite
 * @param kind what it measures
 * @param unit the unit it was written in
 */
public record Quantity(double si, QuantityKind kind, Unit unit) {

  private static final Pattern NUMBER_THEN_UNIT =
      Pattern.compile("([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)");

  private static final Pattern THOUSANDS_OR_DECIMAL = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

  /** What is left of a number written with separated thousands, or with two decimal marks. */
  private static final Pattern REST_OF_A_NUMBER = Pattern.compile("(?:[.,]\\d|\\d{3}(?!\\d)).*");

  /** The minus of typography, the dash people paste for it, and the blanks that do not break. */
  private static final Pattern MINUS = Pattern.compile("[−–]");

  private static final Pattern BLANK = Pattern.compile("[\\u00a0\\u2007\\u2009\\u202f]");

  public Quantity {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException(kind.label() + " " + si + " is not a finite number");
    }
  }

  /**
   * Reads a number with its unit. A decimal comma is accepted; "1,234" is refused because it may be
   * a thousand or a decimal. A unit is required except for plain numbers and fractions.
   * Temperatures below absolute zero and fractions outside 0 to 1 are refused.
   *
   * @throws QuantityFormatException if the text is no number, the unit is missing or unknown, or
   *     the unit measures something else
   */
  public static Quantity parse(String text, QuantityKind kind) {
    String plain = MINUS.matcher(BLANK.matcher(text).replaceAll(" ")).replaceAll("-");
    String trimmed = plain.strip();
    Matcher matcher = NUMBER_THEN_UNIT.matcher(trimmed);
    if (!matcher.matches()) {
      throw new QuantityFormatException(
          "'" + trimmed + "' does not start with a number", adviceFor(kind));
    }
    String unitText = matcher.group(2).strip();
    if (REST_OF_A_NUMBER.matcher(unitText).matches()) {
      throw new QuantityFormatException(
          "'" + trimmed + "' has more than one mark in its number",
          "write it without marks between thousands");
    }
    double value = number(matcher.group(1));
    if (unitText.isEmpty() && kind.dimension().equals(Dimension.NONE)) {
      unitText = "1";
    }
    if (unitText.isEmpty()) {
      throw new QuantityFormatException(
          "the unit is missing after '" + trimmed + "'", adviceFor(kind));
    }
    return of(value, Unit.parse(unitText), kind);
  }

  /**
   * The quantity {@code value} in {@code unit}.
   *
   * @throws QuantityFormatException if the unit measures something else than {@code kind}
   */
  public static Quantity of(double value, Unit unit, QuantityKind kind) {
    if (!unit.dimension().equals(kind.dimension())) {
      throw new QuantityFormatException(
          "'" + unit.symbol() + "' is not a unit of " + kind.label(), adviceFor(kind, unit));
    }
    double si = kind == QuantityKind.TEMPERATURE ? unit.toSi(value) : unit.differenceToSi(value);
    if (!Double.isFinite(si)) {
      throw new QuantityFormatException(value + " is too large", adviceFor(kind));
    }
    requirePossible(si, kind, value + " " + unit.symbol());
    return new Quantity(si, kind, unit);
  }

  /** This quantity's value in another unit of the same dimension. */
  public double in(Unit other) {
    if (!other.dimension().equals(kind.dimension())) {
      throw new IllegalArgumentException(other.symbol() + " is not a unit of " + kind.label());
    }
    return kind == QuantityKind.TEMPERATURE ? other.fromSi(si) : other.differenceFromSi(si);
  }

  private static double number(String text) {
    if (THOUSANDS_OR_DECIMAL.matcher(text).matches()) {
      throw new QuantityFormatException(
          "'" + text + "' may mean a thousand or a decimal",
          "write " + text.replace(",", "") + " or " + text.replace(',', '.'));
    }
    return Double.parseDouble(text.replace(',', '.'));
  }

  private static void requirePossible(double si, QuantityKind kind, String written) {
    if (kind == QuantityKind.TEMPERATURE && si < 0) {
      throw new QuantityFormatException(
          "'" + written + "' lies below absolute zero", adviceFor(kind));
    }
    if (kind == QuantityKind.FRACTION && !(si >= 0 && si <= 1)) {
      throw new QuantityFormatException(
          "'" + written + "' is no share between 0 and 1", "write percent, such as 5 %");
    }
  }

  private static String adviceFor(QuantityKind kind, Unit unit) {
    return kind == QuantityKind.LENGTH && unit.symbol().startsWith("micron")
        ? "a micron here is one of mercury, 1 mTorr; write µm"
        : adviceFor(kind);
  }

  private static String adviceFor(QuantityKind kind) {
    return "write a " + kind.label() + " such as " + kind.example();
  }
}
