package org.firnline.app.reading;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
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

  private static final String ZONE = "zone";
  private static final String DATE_ORDER = "dateOrder";
  private static final String COLUMN = "column:";

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
   * @param zone in which a start time was typed
   */
  static ReadingChoices of(Map<String, String> answers, ZoneId zone) {
    ReadingChoices choices = ReadingChoices.none();
    Map<String, ColumnChoice> columns = new HashMap<>();
    for (Map.Entry<String, String> entry : answers.entrySet()) {
      String answer = entry.getValue().strip();
      switch (entry.getKey()) {
        case ZONE -> choices = choices.withZone(ZoneId.of(answer));
        case DATE_ORDER -> choices = choices.withDateOrder(dateOrder(answer));
        case START -> {
          LocalDateTime local = LocalDateTime.parse(answer.replace(' ', 'T'));
          choices = choices.withStart(local.atZone(zone).toInstant());
        }
        default -> {
          if (entry.getKey().startsWith(COLUMN)) {
            columns.put(entry.getKey().substring(COLUMN.length()), column(answer));
          }
        }
      }
    }
    return columns.isEmpty() ? choices : choices.withColumns(columns);
  }

  private static DateOrder dateOrder(String label) {
    return Arrays.stream(DateOrder.values())
        .filter(order -> order.label().equalsIgnoreCase(label))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such order: " + label));
  }

  /** A column's role where the answer is the name of one, else its unit. */
  private static ColumnChoice column(String answer) {
    Optional<Role> role =
        Arrays.stream(Role.values()).filter(r -> r.label().equalsIgnoreCase(answer)).findFirst();
    return new ColumnChoice(role, role.isPresent() ? Optional.empty() : Optional.of(answer));
  }
}
