package org.firnline.logs.stamp;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A date in figures as the file writes it, its order not yet decided.
 *
 * @param first first figure
 * @param second second figure
 * @param third third figure
 * @param firstDigits how many digits the first has
 * @param thirdDigits how many digits the third has
 * @param month month if written as a word, else 0; then two figures remain, day and year
 * @param separator sign between the figures
 */
public record DateFields(
    int first, int second, int third, int firstDigits, int thirdDigits, int month, char separator) {

  /** Order of the three figures. */
  public enum Order {
    DAY_MONTH_YEAR,
    MONTH_DAY_YEAR,
    YEAR_MONTH_DAY
  }

  /** The date in an order; empty if that order makes no date of it. */
  public Optional<LocalDate> in(Order order) {
    try {
      return Optional.of(dateIn(order));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private LocalDate dateIn(Order order) {
    if (month > 0) {
      return firstDigits == 4
          ? LocalDate.of(first, month, second)
          : LocalDate.of(year(second, 0), month, first);
    }
    if ((firstDigits == 4 && order != Order.YEAR_MONTH_DAY)
        || (thirdDigits == 4 && order == Order.YEAR_MONTH_DAY)) {
      throw new DateTimeException("the year stands elsewhere");
    }
    return switch (order) {
      case DAY_MONTH_YEAR -> LocalDate.of(year(third, thirdDigits), second, first);
      case MONTH_DAY_YEAR -> LocalDate.of(year(third, thirdDigits), first, second);
      case YEAR_MONTH_DAY -> LocalDate.of(year(first, firstDigits), second, third);
    };
  }

  private static int year(int figure, int digits) {
    if (digits == 4 || figure > 99) {
      return figure;
    }
    return figure < 80 ? 2000 + figure : 1900 + figure;
  }
}
