package org.firnline.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpokenTimeTest {
  private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 25, 14, 2);

  @ParameterizedTest
  @CsvSource({
    "today 16:30, 2026-11-25T16:30",
    "Today 8:05, 2026-11-25T08:05",
    "tomorrow 07:00, 2026-11-26T07:00",
    "16:30, 2026-11-25T16:30",
    "8:00, 2026-11-26T08:00",
    "tomorrow 7.15, 2026-11-26T07:15",
  })
  void becomesADate(String spoken, String written) {
    assertThat(SpokenTime.asWritten(spoken, NOW)).isEqualTo(written);
  }

  @ParameterizedTest
  @CsvSource({"2026-11-26 16:30", "at noon", "25:61", "yesterday 8:00"})
  void leavesOtherTextAsItIs(String text) {
    assertThat(SpokenTime.asWritten(text, NOW)).isEqualTo(text);
  }

  @Test
  void offersTheNextHalfHour() {
    assertThat(SpokenTime.soon(NOW)).isEqualTo("today 14:30");
    assertThat(SpokenTime.soon(NOW.withHour(23).withMinute(40))).isEqualTo("tomorrow 0:00");
  }
}
