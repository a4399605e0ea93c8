package org.firnline.logs;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.firnline.logs.channel.Role;
import org.firnline.units.Unit;

/**
 * One choice on every axis by which logs differ, drawn by chance: encoding, delimiter, decimal
 * mark, thousands, date form, zone, header rows, place of units, words for nothing, structure,
 * language.
 */
record LayoutAxes(
    String encoding,
    boolean mark,
    char delimiter,
    char decimal,
    String thousands,
    Stamps stamps,
    String zone,
    Heading heading,
    String temperature,
    String pressure,
    String sentinel,
    Structure structure,
    Names names,
    int preamble,
    String newline,
    boolean quoted) {

  enum Structure {
    WIDE,
    TRAILING_DELIMITER,
    REPEATED_HEADER,
    STATISTICS,
    LONG,
    FIXED_WIDTH
  }

  enum Heading {
    BRACKETS,
    PARENTHESES,
    BEHIND_A_SPACE,
    UNDERSCORE,
    OWN_ROW,
    IN_EACH_CELL
  }

  enum Stamps {
    ISO_UTC("yyyy-MM-dd'T'HH:mm:ss'Z'"),
    ISO_OFFSET("yyyy-MM-dd'T'HH:mm:ssXXX"),
    ISO_LOCAL("yyyy-MM-dd HH:mm:ss"),
    ISO_COMMA_MILLIS("yyyy-MM-dd HH:mm:ss,SSS"),
    POINTS("dd.MM.yyyy HH:mm:ss"),
    AMERICAN("MM/dd/yyyy hh:mm:ss a"),
    SHORT_YEAR("dd/MM/yy HH:mm"),
    MONTH_NAME("dd MMM yyyy HH:mm:ss"),
    COMPACT("yyyyMMdd HHmmss"),
    TWO_COLUMNS("dd.MM.yyyy HH:mm:ss"),
    EPOCH_SECONDS(""),
    EPOCH_MILLIS(""),
    SERIAL(""),
    ELAPSED_SECONDS(""),
    ELAPSED_MINUTES(""),
    ELAPSED_CLOCK("");

    final String pattern;

    Stamps(String pattern) {
      this.pattern = pattern;
    }

    boolean isElapsed() {
      return name().startsWith("ELAPSED");
    }
  }

  /** What a language calls the columns. */
  enum Names {
    ENGLISH("Time", "Shelf", "Product 1", "Chamber pressure", "Condenser", Locale.ENGLISH),
    TERSE("t", "T_shelf", "TP1", "P_ch", "T_trap", Locale.ENGLISH),
    GERMAN("Zeit", "Stellfläche", "Produkt 1", "Kammerdruck", "Eiskondensator", Locale.GERMAN),
    FRENCH("Heure", "Étagère", "Produit 1", "Pression chambre", "Piège", Locale.FRENCH),
    SPANISH("Hora", "Balda", "Producto 1", "Presión cámara", "Condensador", new Locale("es")),
    ITALIAN("Ora", "Ripiano", "Prodotto 1", "Pressione camera", "Condensatore", Locale.ITALIAN);

    final List<String> columns;
    final String time;
    final Locale locale;

    Names(String time, String shelf, String product, String p, String coll, Locale locale) {
      this.time = time;
      this.columns = List.of(shelf, product, p, coll);
      this.locale = locale;
    }
  }

  @SafeVarargs
  private static <T> T one(Random random, T... options) {
    return options[random.nextInt(options.length)];
  }

  /** Axes drawn by chance; impossible pairs are made possible. */
  static LayoutAxes drawn(Random random) {
    String encoding =
        one(random, "UTF-8", "UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "IBM437");
    Structure structure = one(random, Structure.values());
    char delimiter = structure == Structure.FIXED_WIDTH ? ' ' : one(random, ',', ';', '\t', '|');
    char decimal = one(random, '.', ',');
    String grouping = decimal == '.' ? one(random, ",", " ", "'") : one(random, ".", " ", "\u00A0");
    boolean grouped =
        random.nextInt(3) == 0 && structure != Structure.FIXED_WIDTH && !encoding.equals("IBM437");
    Stamps stamps = one(random, Stamps.values());
    Heading heading = one(random, Heading.values());
    if (structure == Structure.LONG || structure == Structure.FIXED_WIDTH) {
      heading = heading == Heading.IN_EACH_CELL ? Heading.BRACKETS : heading;
    }
    Names names = one(random, Names.values());
    boolean micro = encoding.equals("windows-1252") || encoding.startsWith("UTF");
    return new LayoutAxes(
        encoding,
        encoding.startsWith("UTF") && random.nextBoolean(),
        delimiter,
        decimal,
        grouped ? grouping : "",
        stamps,
        one(random, "UTC", "Europe/Berlin", "America/New_York", "Asia/Kolkata"),
        heading,
        one(random, "°C", "°C", "°C", "°F", "K"),
        one(random, "Pa", "mbar", "Torr", "mTorr", micro ? "µbar" : "hPa", "kPa"),
        one(random, "---", "OL", "NaN", "", "Err", "9999", "#N/A", "-999.9", "n/a"),
        structure,
        names,
        stamps.isElapsed() ? 1 + random.nextInt(2) : random.nextInt(3),
        one(random, "\n", "\r\n"),
        random.nextInt(5) == 0 && structure != Structure.FIXED_WIDTH);
  }

  Unit unit(Role role) {
    return Unit.parse(role == Role.PRESSURE ? pressure : temperature);
  }

  private String symbol(Role role) {
    return role == Role.PRESSURE ? pressure : temperature;
  }

  /** One product value in a while is no value. */
  boolean isMissing(Role role, int row) {
    return role == Role.PRODUCT && row % 19 == 7;
  }

  private String number(Role role, int row) {
    if (isMissing(role, row)) {
      return sentinel;
    }
    BigDecimal value = KnownRun.printed(role, row, unit(role));
    String plain = value.toPlainString();
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    String rest = point < 0 ? "" : decimal + plain.substring(point + 1);
    return whole.replaceAll("(?<=\\d)(?=(\\d{3})+$)", thousands) + rest;
  }

  private String stamp(int row) {
    Instant at = KnownRun.time(row);
    long elapsed = (long) row * KnownRun.STEP_S;
    return switch (stamps) {
      case EPOCH_SECONDS -> String.valueOf(at.getEpochSecond());
      case EPOCH_MILLIS -> String.valueOf(at.toEpochMilli());
      case SERIAL -> {
        long local =
            at.atZone(ZoneId.of(zone)).toLocalDateTime().toEpochSecond(java.time.ZoneOffset.UTC);
        yield String.format(Locale.ROOT, "%.8f", 25_569 + local / 86_400.0).replace('.', decimal);
      }
      case ELAPSED_SECONDS -> String.valueOf(elapsed);
      case ELAPSED_MINUTES -> String.valueOf(row);
      case ELAPSED_CLOCK ->
          String.format("%d:%02d:%02d", elapsed / 3600, elapsed / 60 % 60, elapsed % 60);
      default -> {
        ZoneId in = stamps == Stamps.ISO_UTC ? ZoneId.of("UTC") : ZoneId.of(zone);
        Locale locale = stamps == Stamps.MONTH_NAME ? names.locale : Locale.ENGLISH;
        yield DateTimeFormatter.ofPattern(stamps.pattern, locale)
            .format(ZonedDateTime.ofInstant(at, in));
      }
    };
  }

  private List<String> timeHeads() {
    String unit =
        switch (stamps) {
          case ELAPSED_SECONDS -> " [s]";
          case ELAPSED_MINUTES -> " [min]";
          default -> "";
        };
    return stamps == Stamps.TWO_COLUMNS ? List.of("Datum", names.time) : List.of(names.time + unit);
  }

  private List<String> timeCells(int row) {
    String stamp = stamp(row);
    return stamps == Stamps.TWO_COLUMNS ? List.of(stamp.split(" ")) : List.of(stamp);
  }

  private String head(int column) {
    Role role = KnownRun.ROLES.get(column);
    String name = names.columns.get(column);
    String unit = symbol(role);
    return switch (heading) {
      case BRACKETS -> name + " [" + unit + "]";
      case PARENTHESES -> name + " (" + unit + ")";
      case BEHIND_A_SPACE -> name + " " + unit;
      case UNDERSCORE -> name.replace(' ', '_') + "_" + unit.replace("°", "");
      case OWN_ROW, IN_EACH_CELL -> name;
    };
  }

  private String line(List<String> cells) {
    List<String> written = new ArrayList<>();
    for (String cell : cells) {
      boolean quote = quoted || cell.indexOf(delimiter) >= 0;
      written.add(quote && delimiter != ' ' ? '"' + cell + '"' : cell);
    }
    if (structure == Structure.FIXED_WIDTH) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < written.size(); i++) {
        line.append(String.format(i == 0 ? "%-27s" : "%26s", written.get(i)));
      }
      return line.toString().stripTrailing() + newline;
    }
    String end = structure == Structure.TRAILING_DELIMITER ? String.valueOf(delimiter) : "";
    return String.join(String.valueOf(delimiter), written) + end + newline;
  }

  private String header() {
    List<String> names = new ArrayList<>(timeHeads());
    List<String> units = new ArrayList<>(timeHeads().stream().map(head -> "").toList());
    for (int i = 0; i < KnownRun.ROLES.size(); i++) {
      names.add(head(i));
      units.add(symbol(KnownRun.ROLES.get(i)));
    }
    return heading == Heading.OWN_ROW ? line(names) + line(units) : line(names);
  }

  private String row(int row) {
    List<String> cells = new ArrayList<>(timeCells(row));
    for (Role role : KnownRun.ROLES) {
      String number = number(role, row);
      boolean bare = heading != Heading.IN_EACH_CELL || isMissing(role, row);
      cells.add(bare ? number : number + " " + symbol(role));
    }
    return line(cells);
  }

  private String longTable() {
    StringBuilder text = new StringBuilder();
    List<String> heads = new ArrayList<>(timeHeads());
    heads.addAll(List.of("Tag", "Value", "Unit"));
    text.append(line(heads));
    for (int row = 0; row < KnownRun.ROWS; row++) {
      for (int i = 0; i < KnownRun.ROLES.size(); i++) {
        Role role = KnownRun.ROLES.get(i);
        List<String> cells = new ArrayList<>(timeCells(row));
        cells.addAll(List.of(names.columns.get(i), number(role, row), symbol(role)));
        text.append(line(cells));
      }
    }
    return text.toString();
  }

  private String before() {
    ZonedDateTime start = ZonedDateTime.ofInstant(KnownRun.START, ZoneId.of(zone));
    String begin = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss").format(start);
    return switch (preamble) {
      case 0 -> "";
      case 1 -> "Run: HF-0231" + newline + "Start: " + begin + newline + newline;
      default ->
          "Harrow Fen dryer 2"
              + newline
              + "Started: "
              + begin
              + newline
              + "Operator: R. Marsh"
              + newline
              + "Serial: 000417"
              + newline
              + newline;
    };
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder(before());
    if (structure == Structure.LONG) {
      text.append(longTable());
    } else {
      text.append(header());
      for (int row = 0; row < KnownRun.ROWS; row++) {
        text.append(structure == Structure.REPEATED_HEADER && row == 50 ? header() : "");
        text.append(row(row));
      }
      if (structure == Structure.STATISTICS) {
        text.append(line(List.of("Min", "-80", "-80", "1", "-80")));
        text.append(line(List.of("Max", "20", "20", "1", "20")));
      }
    }
    String whole = (mark ? "\uFEFF" : "") + text;
    return whole.getBytes(Charset.forName(encoding));
  }
}
