package org.firnline.app.plan;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Start times as people say them: "today 16:30", "tomorrow 8:00", "16:30". */
final class SpokenTime {
  private static final Pattern DAY_AND_CLOCK =
      Pattern.compile("(today|tomorrow)?,?\\s*([0-9]{1,2}[:.][0-9]{2})");

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm", Locale.ROOT);
  private static final int HALF_HOUR = 30;

  private SpokenTime() {}

  /** The time as a plan file writes it; text that is no spoken time comes back as it is. */
  static String asWritten(String spoken, LocalDateTime now) {
    Matcher matcher = DAY_AND_CLOCK.matcher(spoken.strip().toLowerCase(Locale.ENGLISH));
    if (!matcher.matches()) {
      return spoken;
    }
    try {
      LocalTime time = LocalTime.parse(matcher.group(2).replace('.', ':'), CLOCK);
      LocalDate today = now.toLocalDate();
      String day = matcher.group(1);
      LocalDate date = "tomorrow".equals(day) ? today.plusDays(1) : today;
      LocalDateTime said = date.atTime(time);
      boolean nextDay = day == null && said.isBefore(now);
      return (nextDay ? said.plusDays(1) : said).toString();
    } catch (DateTimeParseException e) {
      return spoken;
    }
  }

  /** The next full or half hour, as people say it. */
  static String soon(LocalDateTime now) {
    LocalDateTime hour = now.truncatedTo(ChronoUnit.HOURS);
    LocalDateTime next =
        now.getMinute() < HALF_HOUR ? hour.plusMinutes(HALF_HOUR) : hour.plusHours(1);
    String day = next.toLocalDate().equals(now.toLocalDate()) ? "today " : "tomorrow ";
    return day + CLOCK.format(next);
  }
}
