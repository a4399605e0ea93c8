package org.firnline.app.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.firnline.logs.DateOrder;
import org.firnline.logs.ReadingChoices;
import org.firnline.logs.channel.Role;
import org.junit.jupiter.api.Test;

class ChosenReadingTest {
  private static final ZoneId HERE = ZoneId.of("Europe/Berlin");

  private static ReadingChoices of(String choice, String answer) {
    return ChosenReading.of(Map.of(choice, answer), HERE);
  }

  @Test
  void takesAZone() {
    assertThat(of("zone", "Europe/London").zone()).contains(ZoneId.of("Europe/London"));
  }

  @Test
  void takesADateOrderByItsWords() {
    assertThat(of("dateOrder", "day month year").dateOrder()).contains(DateOrder.DAY_MONTH_YEAR);
  }

  @Test
  void takesAStartByTheClockOfTheLaboratory() {
    assertThat(of("start", "2026-11-24 16:30").start())
        .contains(Instant.parse("2026-11-24T15:30:00Z"));
  }

  @Test
  void takesTheRoleOrTheUnitOfAColumn() {
    assertThat(of("column:p1", "mTorr").columns().get("p1").unit()).contains("mTorr");
    assertThat(of("column:T3", "product").columns().get("T3").role()).contains(Role.PRODUCT);
  }

  @Test
  void namesTheAnswersThatCannotBeUsed() {
    Map<String, String> answers =
        Map.of("zone", "Atlantis", "start", "soon", "dateOrder", "whatever", "column:p", "Pa");
    assertThat(ChosenReading.refused(answers, HERE)).containsOnlyKeys("zone", "start", "dateOrder");
  }

  @Test
  void leavesUnknownChoicesAlone() {
    assertThat(of("colour", "blue")).isEqualTo(ReadingChoices.none());
  }
}
