package org.firnline.app.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.time.Duration;
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
  void takesEverythingElseThatCanBeGuessedOtherwise() {
    assertThat(of("encoding", "IBM437").encoding()).contains(Charset.forName("IBM437"));
    assertThat(of("delimiter", "tab").delimiter()).contains('\t');
    assertThat(of("delimiter", "space").delimiter()).contains(' ');
    assertThat(of("decimalMark", ",").decimalMark()).contains(',');
    assertThat(of("clockNeverChanges", "yes").clockNeverChanges()).isTrue();
    assertThat(of("clockOffset:b.csv", "-12.5 s").clockOffsets())
        .containsEntry("b.csv", Duration.ofMillis(-12_500));
  }

  @Test
  void takesRoleAndUnitOfOneColumnTogether() {
    ReadingChoices choices =
        ChosenReading.of(Map.of("role:p1", "pressure", "unit:p1", "mTorr"), HERE);
    assertThat(choices.columns().get("p1").role()).contains(Role.PRESSURE);
    assertThat(choices.columns().get("p1").unit()).contains("mTorr");
  }

  @Test
  void refusesWhatNoFileHas() {
    Map<String, String> answers =
        Map.of(
            "encoding", "nothing",
            "delimiter", "ab",
            "decimalMark", "x",
            "role:T", "left",
            "clockOffset:b", "soon");
    assertThat(ChosenReading.refused(answers, HERE)).containsOnlyKeys(answers.keySet());
  }

  @Test
  void leavesUnknownChoicesAlone() {
    assertThat(of("colour", "blue")).isEqualTo(ReadingChoices.none());
  }
}
