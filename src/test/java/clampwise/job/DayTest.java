package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.source.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates as they are written, and the months between them. */
class DayTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"2026-02-29", "2026-13-01", "2026-4-1", "26-04-01", "tomorrow", "2026-04-1x"})
  void noSuchDay(String text) {
    assertThat(Day.of(text, Span.startOf("job.yaml"))).isEmpty();
  }

  @Test
  void aYearLaterIsTwelveMonthsAndTheDayAfterThirteen() {
    assertThat(day("2025-05-04").monthsUntil(day("2026-05-04"))).isEqualTo(12);
    assertThat(day("2025-05-04").monthsUntil(day("2026-05-05"))).isEqualTo(13);
    assertThat(day("2025-05-04").monthsUntil(day("2025-05-03"))).isZero();
  }

  @Test
  void anAgeIsSaidInMonthsAndDays() {
    assertThat(day("2025-05-04").ageOn(day("2026-05-05"))).isEqualTo("12 months and 1 day");
    assertThat(day("2025-05-04").ageOn(day("2026-05-04"))).isEqualTo("12 months");
    assertThat(day("2025-05-04").ageOn(day("2025-06-06"))).isEqualTo("1 month and 2 days");
    assertThat(day("2025-05-04").ageOn(day("2025-05-04"))).isEqualTo("0 days");
  }

  @Test
  void asManyMonthsLaterIsThatManyMonths() {
    Day from = day("2020-01-15");
    for (int months = 0; months <= 240; months++) {
      Day to = new Day(from.date().plusMonths(months), from.at());
      assertThat(from.monthsUntil(to)).isEqualTo(months);
    }
  }

  private static Day day(String text) {
    return Day.of(text, Span.startOf("job.yaml")).orElseThrow();
  }
}
