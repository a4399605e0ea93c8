package org.firnline.logs.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Says in plain text what a cell of a workbook shows: dates as ISO, numbers with a point. */
final class SheetCells {
  private static final double DAY_MS = 86_400_000;
  private static final LocalDateTime ZERO_1900 = LocalDateTime.of(1899, 12, 30, 0, 0);
  private static final LocalDateTime ZERO_1904 = LocalDateTime.of(1904, 1, 1, 0, 0);

  /** The last day of the year 9999; larger numbers are no dates. */
  private static final double LAST_DAY = 2_958_465;

  /** What a workbook can hold exactly; the rest is dust of binary fractions. */
  private static final MathContext FIFTEEN_DIGITS = new MathContext(15);

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss.SSS", Locale.ROOT);

  private final SharedTexts texts;
  private final CellStyles styles;
  private final boolean from1904;

  /**
   * For the cells of one workbook.
   *
   * @param from1904 whether its days are counted from 1904
   */
  SheetCells(SharedTexts texts, CellStyles styles, boolean from1904) {
    this.texts = texts;
    this.styles = styles;
    this.from1904 = from1904;
  }

  /**
   * The text of a cell.
   *
   * @param type its type as written, empty for numbers
   * @param style its style
   * @param value its stored value as written
   */
  String text(String type, int style, String value) {
    return switch (type) {
      case "s" -> texts.at(value.strip());
      case "", "n" -> number(styles.of(style), value.strip());
      case "b" -> value.strip().equals("1") ? "TRUE" : "FALSE";
      default -> value.strip();
    };
  }

  private String number(CellStyles.Show show, String value) {
    double number;
    try {
      number = value.length() > 40 ? Double.NaN : Double.parseDouble(value);
    } catch (NumberFormatException e) {
      return value;
    }
    if (Double.isNaN(number) || Double.isInfinite(number)) {
      return value;
    }
    if (show == CellStyles.Show.ELAPSED && Math.abs(number) < LAST_DAY) {
      return elapsed(number);
    }
    boolean isDate = show != CellStyles.Show.NUMBER && number >= 0 && number < LAST_DAY;
    return isDate ? date(show, number) : plain(number, value);
  }

  private String date(CellStyles.Show show, double days) {
    if (days < 1 && show != CellStyles.Show.DATE) {
      return elapsed(days);
    }
    LocalDateTime zero = from1904 ? ZERO_1904 : ZERO_1900;
    String stamp = STAMP.format(zero.plusNanos(Math.round(days * DAY_MS) * 1_000_000L));
    String whole = stamp.endsWith(".000") ? stamp.substring(0, stamp.length() - 4) : stamp;
    return show == CellStyles.Show.DATE && whole.endsWith(" 00:00:00")
        ? whole.substring(0, whole.indexOf(' '))
        : whole;
  }

  private static String elapsed(double days) {
    long millis = Math.round(days * DAY_MS);
    long seconds = millis / 1000;
    String clock =
        String.format(
            Locale.ROOT, "%02d:%02d:%02d", seconds / 3600, seconds / 60 % 60, seconds % 60);
    return millis % 1000 == 0
        ? clock
        : clock + String.format(Locale.ROOT, ".%03d", Math.abs(millis % 1000));
  }

  private static String plain(double number, String written) {
    if (written.length() <= 12 && !written.contains("E") && !written.contains("e")) {
      return written;
    }
    BigDecimal rounded = new BigDecimal(number).round(FIFTEEN_DIGITS).stripTrailingZeros();
    return Math.abs(rounded.scale()) < 30 ? rounded.toPlainString() : rounded.toString();
  }
}
