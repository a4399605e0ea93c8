package org.firnline.app.reading;

import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.ColumnChoice;
import org.firnline.logs.DateOrder;
import org.firnline.logs.ReadingChoices;
import org.firnline.logs.channel.Role;

/** What people answered about a file, turned into choices for the reader. */
public final class ChosenReading {
  /** The choice that says when a log began whose file does not. */
  public static final String START = "start";

  /** The choice of a column's role; the column's name stands behind it. */
  public static final String ROLE = "role:";

  /** The choice of a column's unit; the column's name stands behind it. */
  public static final String UNIT = "unit:";

  private static final String COLUMN = "column:";
  private static final String CLOCK_OFFSET = "clockOffset:";

  private ChosenReading() {}

  /**
   * Which answers cannot be used, by name of the choice; empty when all can.
   *
   * @param zone the laboratory's own
   */
  public static Map<String, String> refused(Map<String, String> answers, ZoneId zone) {
    Map<String, String> refused = new LinkedHashMap<>();
    answers.forEach(
        (choice, answer) -> {
          try {
            of(Map.of(choice, answer), zone);
          } catch (IllegalArgumentException | DateTimeException e) {
            refused.put(choice, answer);
          }
        });
    return refused;
  }

  /**
   * The choices; answers to unknown choices are left out.
   *
   * @param answers answers by name of the choice, as {@link org.firnline.logs.Guess#choice()} has
   *     it
   * @param zone in which a start time was typed
   * @throws IllegalArgumentException if an answer cannot be used
   * @throws DateTimeException if a zone or a time cannot be used
   */
  public static ReadingChoices of(Map<String, String> answers, ZoneId zone) {
    ReadingChoices choices = ReadingChoices.none();
    Map<String, ColumnChoice> columns = new HashMap<>();
    Map<String, Duration> offsets = new HashMap<>();
    for (Map.Entry<String, String> entry : answers.entrySet()) {
      String choice = entry.getKey();
      String answer = entry.getValue().strip();
      if (choice.startsWith(CLOCK_OFFSET)) {
        offsets.put(choice.substring(CLOCK_OFFSET.length()), seconds(answer));
      } else if (choice.contains(":")) {
        column(columns, choice, answer);
      } else {
        choices = chosen(choices, choice, answer, zone);
      }
    }
    return choices.withColumns(columns).withClockOffsets(offsets);
  }

  private static ReadingChoices chosen(
      ReadingChoices choices, String choice, String answer, ZoneId zone) {
    return switch (choice) {
      case "zone" -> choices.withZone(ZoneId.of(answer));
      case "dateOrder" -> choices.withDateOrder(dateOrder(answer));
      case "encoding" -> choices.withEncoding(Charset.forName(answer));
      case "delimiter" -> choices.withDelimiter(delimiter(answer));
      case "decimalMark" -> choices.withDecimalMark(single(answer));
      case "clockNeverChanges" -> choices.withClockNeverChanges(answer.equalsIgnoreCase("yes"));
      case START -> {
        LocalDateTime local = LocalDateTime.parse(answer.replace(' ', 'T'));
        yield choices.withStart(local.atZone(zone).toInstant());
      }
      default -> choices;
    };
  }

  private static DateOrder dateOrder(String label) {
    return Arrays.stream(DateOrder.values())
        .filter(order -> order.label().equalsIgnoreCase(label))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such order: " + label));
  }

  private static char delimiter(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "tab" -> '\t';
      case "space" -> ' ';
      default -> single(word);
    };
  }

  private static char single(String sign) {
    if (sign.length() != 1 || ",;|.".indexOf(sign.charAt(0)) < 0) {
      throw new IllegalArgumentException("not a sign that parts or marks numbers: " + sign);
    }
    return sign.charAt(0);
  }

  private static Duration seconds(String answer) {
    double seconds = Double.parseDouble(answer.replaceAll("\\s*s$", ""));
    if (!(Math.abs(seconds) < 1e10)) {
      throw new IllegalArgumentException("no offset of a clock: " + answer);
    }
    return Duration.ofMillis(Math.round(seconds * 1000));
  }

  /** "role:" and "unit:" say which is meant; "column:" takes either. */
  private static void column(Map<String, ColumnChoice> columns, String choice, String answer) {
    int cut = choice.indexOf(':') + 1;
    String name = choice.substring(cut);
    Optional<Role> role =
        Arrays.stream(Role.values()).filter(r -> r.label().equalsIgnoreCase(answer)).findFirst();
    ColumnChoice said =
        columns.getOrDefault(name, new ColumnChoice(Optional.empty(), Optional.empty()));
    switch (choice.substring(0, cut)) {
      case ROLE -> {
        if (role.isEmpty()) {
          throw new IllegalArgumentException("no such role: " + answer);
        }
        columns.put(name, new ColumnChoice(role, said.unit()));
      }
      case UNIT -> columns.put(name, new ColumnChoice(said.role(), Optional.of(answer)));
      case COLUMN ->
          columns.put(
              name,
              role.isPresent()
                  ? new ColumnChoice(role, said.unit())
                  : new ColumnChoice(said.role(), Optional.of(answer)));
      default -> {
        // a choice of another kind of file
      }
    }
  }
}
