package org.firnline.logs.stamp;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;

/**
 * Decides the order of day, month and year over all dates of a file: a field above 12, the year's
 * place, dates that follow each other at midnight, the date the file was written.
 */
public final class DateOrderFinder {
  private static final long LONGEST_RUN_DAYS = 25;

  /**
   * Decides the order.
   *
   * @param dates the distinct dates in order of first appearance
   * @param fileTime when the file was last written
   * @param hints other dates the file writes without ambiguity, such as in its preamble
   */
  public DateOrderVerdict find(
      List<DateFields> dates, Optional<Instant> fileTime, List<LocalDate> hints) {
    List<DateFields.Order> open = new ArrayList<>();
    for (DateFields.Order order : DateFields.Order.values()) {
      if (dates.stream().allMatch(date -> date.in(order).isPresent())) {
        open.add(order);
      }
    }
    if (open.isEmpty()) {
      return verdict(DateFields.Order.DAY_MONTH_YEAR, open, "no order fits all dates", false);
    }
    if (open.size() == 1) {
      return verdict(open.get(0), open, "only this order makes dates of all fields", true);
    }
    if (open.contains(DateFields.Order.YEAR_MONTH_DAY)) {
      return yearFirstOrLast(dates, open, fileTime, hints);
    }
    return narrowed(dates, open, fileTime, hints);
  }

  private DateOrderVerdict yearFirstOrLast(
      List<DateFields> dates,
      List<DateFields.Order> open,
      Optional<Instant> fileTime,
      List<LocalDate> hints) {
    if (dates.get(0).firstDigits() == 4) {
      DateFields.Order order = DateFields.Order.YEAR_MONTH_DAY;
      return verdict(order, List.of(order), "the year stands first", true);
    }
    // Two figures for the year: years stand last unless only hyphens and continuity say otherwise.
    List<DateFields.Order> rest = new ArrayList<>(open);
    if (dates.get(0).separator() != '-') {
      rest.remove(DateFields.Order.YEAR_MONTH_DAY);
    }
    return rest.size() == 1
        ? verdict(rest.get(0), rest, "only this order makes dates of all fields", true)
        : narrowed(dates, rest, fileTime, hints);
  }

  private DateOrderVerdict narrowed(
      List<DateFields> dates,
      List<DateFields.Order> open,
      Optional<Instant> fileTime,
      List<LocalDate> hints) {
    if (open.stream().map(order -> all(dates, order)).distinct().count() == 1) {
      return verdict(open.get(0), open.subList(0, 1), "every order gives the same dates", true);
    }
    List<DateFields.Order> continuous =
        open.stream().filter(order -> isOneRun(all(dates, order))).toList();
    if (continuous.size() == 1) {
      return verdict(
          continuous.get(0), continuous, "only in this order do the dates follow on", true);
    }
    List<DateFields.Order> rest = continuous.isEmpty() ? open : continuous;
    List<DateFields.Order> hinted =
        rest.stream()
            .filter(order -> hints.stream().anyMatch(all(dates, order)::contains))
            .toList();
    if (hinted.size() == 1) {
      return verdict(hinted.get(0), hinted, "another date in the file agrees", true);
    }
    List<DateFields.Order> near =
        fileTime
            .map(time -> rest.stream().filter(o -> isNear(all(dates, o), time)).toList())
            .orElse(List.of());
    if (near.size() == 1) {
      return verdict(near.get(0), near, "the file was written within days of it", false);
    }
    if (dates.get(0).separator() == '.' && rest.contains(DateFields.Order.DAY_MONTH_YEAR)) {
      DateFields.Order order = DateFields.Order.DAY_MONTH_YEAR;
      return verdict(order, List.of(order), "dates with points are written day first", false);
    }
    return new DateOrderVerdict(
        rest.get(0), rest, "day and month cannot be told apart", Confidence.LOW);
  }

  private static List<LocalDate> all(List<DateFields> dates, DateFields.Order order) {
    return dates.stream().map(date -> date.in(order).orElse(LocalDate.MIN)).toList();
  }

  private static boolean isOneRun(List<LocalDate> dates) {
    for (int i = 1; i < dates.size(); i++) {
      long step = ChronoUnit.DAYS.between(dates.get(i - 1), dates.get(i));
      if (step < 0 || step > LONGEST_RUN_DAYS) {
        return false;
      }
    }
    return true;
  }

  private static boolean isNear(List<LocalDate> dates, Instant written) {
    LocalDate last = dates.get(dates.size() - 1);
    long days = ChronoUnit.DAYS.between(last, written.atZone(ZoneOffset.UTC).toLocalDate());
    return days >= -1 && days <= 3;
  }

  private static DateOrderVerdict verdict(
      DateFields.Order order, List<DateFields.Order> open, String reason, boolean sure) {
    List<DateFields.Order> rest = open.size() > 1 ? List.of(order) : open;
    return new DateOrderVerdict(order, rest, reason, sure ? Confidence.HIGH : Confidence.MEDIUM);
  }
}
