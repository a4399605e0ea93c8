package org.firnline.logs.text;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firnline.logs.channel.Quality;

/**
 * Reads what people and machines write instead of a plain number: "&gt;1000", "-38.2 °C", "1
 * 234,5", "1.2-3", "0x0013", "OL", "---".
 */
public final class LooseCellReader {
  private static final Pattern NUMBER =
      Pattern.compile(
          "([<>≤≥]=?)?\\s*([+-]?[\\d.,' ]*\\d[.,]?)(?:\\s*(?:[eEdD]|[x×·*]\\s*10\\^?)([+-]?\\d{1,3}))?"
              + "\\s*((?:[°µμ%a-zA-Z][^\\d]{0,11})?)");
  private static final Pattern BARE_EXPONENT = Pattern.compile("([+-]?\\d+[.,]\\d+)([+-]\\d{1,2})");
  private static final Pattern HEX = Pattern.compile("0[xX]([0-9a-fA-F]{1,12})");
  private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:[ ']\\d{3})+");

  private final char decimalMark;
  private final char otherMark;
  private final Map<String, Quality> words;

  /**
   * A reader for one file.
   *
   * @param decimalMark '.' or ','
   * @param words words with a known meaning, in lower case
   */
  public LooseCellReader(char decimalMark, Map<String, Quality> words) {
    this.decimalMark = decimalMark;
    this.otherMark = decimalMark == '.' ? ',' : '.';
    this.words = Map.copyOf(words);
  }

  /** Reads one cell. */
  public LooseCell read(String cell) {
    String text = plainSigns(cell).strip();
    if (text.isEmpty()) {
      return LooseCell.word(Quality.MISSING);
    }
    Optional<Quality> word = meaning(text);
    if (word.isPresent()) {
      return LooseCell.word(word.get());
    }
    Matcher hex = HEX.matcher(text);
    if (hex.matches()) {
      return number((double) Long.parseLong(hex.group(1), 16), "");
    }
    Matcher bare = BARE_EXPONENT.matcher(text);
    if (bare.matches()) {
      return decimal(bare.group(1)).stream()
          .mapToObj(value -> number(scaled(value, bare.group(2)), ""))
          .findFirst()
          .orElse(LooseCell.text());
    }
    Matcher matcher = NUMBER.matcher(text);
    return matcher.matches() ? numbered(matcher) : LooseCell.text();
  }

  private Optional<Quality> meaning(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    Quality exact = words.get(lower);
    if (exact != null) {
      return Optional.of(exact);
    }
    if (lower.chars().allMatch(c -> c == '-' || c == '.' || c == '*' || c == '?' || c == '_')) {
      return Optional.of(Quality.MISSING);
    }
    int space = lower.indexOf(' ');
    Quality first = space > 0 ? words.get(lower.substring(0, space)) : null;
    boolean isCode = space > 0 && lower.substring(space + 1).chars().allMatch(Character::isDigit);
    return isCode ? Optional.ofNullable(first) : Optional.empty();
  }

  private LooseCell numbered(Matcher matcher) {
    OptionalDouble decimal = decimal(matcher.group(2).strip());
    if (decimal.isEmpty()) {
      return LooseCell.text();
    }
    double value = scaled(decimal.getAsDouble(), matcher.group(3));
    String unit = matcher.group(4).strip();
    String bound = matcher.group(1);
    if (bound == null) {
      return number(value, unit);
    }
    Quality quality =
        bound.startsWith("<") || bound.startsWith("≤") ? Quality.UNDER_RANGE : Quality.OVER_RANGE;
    return new LooseCell(LooseCell.Kind.WORD, quality, value, unit);
  }

  private static LooseCell number(double value, String unit) {
    return new LooseCell(LooseCell.Kind.NUMBER, Quality.GOOD, value, unit);
  }

  @SuppressWarnings("NullAway") // a group that did not take part is null by the library's contract
  private static double scaled(double value, String power) {
    if (power == null || !Double.isFinite(value)) {
      return value;
    }
    String digits =
        BigDecimal.valueOf(value).toPlainString(); // a large value brings an E of its own
    return Double.parseDouble(digits + "E" + power.replace("+", ""));
  }

  /** A number in digits, marks and grouping signs; empty if the marks make no sense. */
  private OptionalDouble decimal(String digits) {
    String whole = digits;
    String fraction = "";
    int mark = digits.lastIndexOf(decimalMark);
    if (mark >= 0) {
      if (digits.indexOf(decimalMark) != mark) {
        return OptionalDouble.empty();
      }
      whole = digits.substring(0, mark);
      fraction = digits.substring(mark + 1);
    }
    int other = whole.indexOf(otherMark);
    if (other >= 0 && mark < 0 && isLoneFraction(whole, other)) {
      fraction = whole.substring(other + 1);
      whole = whole.substring(0, other);
    }
    String sign = whole.startsWith("-") ? "-" : "";
    String body = whole.startsWith("-") || whole.startsWith("+") ? whole.substring(1) : whole;
    String grouped = body.replace(otherMark, ' ').strip();
    boolean plain = grouped.chars().allMatch(Character::isDigit);
    boolean sound = plain || GROUPED.matcher(grouped).matches();
    if (!sound || !fraction.chars().allMatch(Character::isDigit)) {
      return OptionalDouble.empty();
    }
    String joined = grouped.replace(" ", "").replace("'", "");
    return OptionalDouble.of(Double.parseDouble(sign + "0" + joined + "." + fraction + "0"));
  }

  /** Whether the other mark can only be a decimal mark here: "0,08", "12,3456" but not "1,234". */
  private static boolean isLoneFraction(String digits, int at) {
    if (digits.indexOf(digits.charAt(at), at + 1) >= 0) {
      return false;
    }
    String before = digits.substring(0, at).replaceFirst("^[+-]", "");
    return digits.length() - at - 1 != 3 || before.equals("0") || before.length() > 3;
  }

  private static String plainSigns(String cell) {
    return cell.replace('\u2212', '-')
        .replace('\u2013', '-')
        .replace('\u00A0', ' ')
        .replace('\u202F', ' ')
        .replace('\u2009', ' ')
        .replace('\u2019', '\'')
        .replace("\0", "");
  }
}
