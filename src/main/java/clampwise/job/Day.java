package clampwise.job;

import clampwise.source.Span;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** A date, written year-month-day. */
public record Day(LocalDate date, Span at) implements Written {

  private static final int LENGTH = 10;

  /** The day of a text such as {@code 2026-04-14}; none if there is no such day. */
  static Optional<Day> of(String text, Span at) {
    if (text.length() != LENGTH || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return Optional.empty();
    }
    try {
      int year = Integer.parseInt(text.substring(0, 4));
      int month = Integer.parseInt(text.substring(5, 7));
      return Optional.of(
          new Day(LocalDate.of(year, month, Integer.parseInt(text.substring(8))), at));
    } catch (NumberFormatException | DateTimeException noDay) {
      return Optional.empty();
    }
  }

  /** Days from this day to another; negative if the other is earlier. */
  public long daysUntil(Day other) {
    return ChronoUnit.DAYS.between(date, other.date);
  }

  /** The least number of months after which this day has come to another; 0 if it is earlier. */
  public long monthsUntil(Day other) {
    long whole = ChronoUnit.MONTHS.between(date, other.date);
    return Math.max(0, date.plusMonths(whole).isBefore(other.date) ? whole + 1 : whole);
  }

  /** How long after this day another comes, in words: {@code 12 months and 1 day}. */
  public String ageOn(Day other) {
    long months = Math.max(0, ChronoUnit.MONTHS.between(date, other.date));
    long days = ChronoUnit.DAYS.between(date.plusMonths(months), other.date);
    String inMonths = months == 1 ? "1 month" : months + " months";
    String inDays = days == 1 ? "1 day" : days + " days";
    if (months == 0) {
      return inDays;
    }
    return days == 0 ? inMonths : inMonths + " and " + inDays;
  }

  @Override
  public String toString() {
    return date.toString();
  }
}
