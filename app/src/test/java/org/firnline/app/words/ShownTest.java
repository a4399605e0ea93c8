package org.firnline.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ShownTest {
  private final Shown shown = new Shown(ZoneId.of("Europe/London"));

  @Nested
  class Times {
    private final Instant winter = Instant.parse("2026-11-25T14:32:10Z");
    private final Instant summer = Instant.parse("2026-07-01T14:32:10Z");

    @Test
    void areReadByTheClockHere() {
      assertThat(shown.moment(winter)).isEqualTo("Wed 25 Nov 14:32");
      assertThat(shown.moment(summer)).isEqualTo("Wed 1 Jul 15:32");
    }

    @Test
    void nameTheDayOnceWhereItIsTheSame() {
      assertThat(shown.span(winter, winter.plusSeconds(3_600)))
          .isEqualTo("Wed 25 Nov 14:32 to 15:32");
      assertThat(shown.span(winter, winter.plusSeconds(86_400)))
          .isEqualTo("Wed 25 Nov 14:32 to Thu 26 Nov 14:32");
    }

    @Test
    void sayHowLongAgoMoreCoarselyTheLongerItIs() {
      assertThat(plain(shown.ago(winter, winter.plusSeconds(70)))).isEqualTo("1 min ago");
      assertThat(plain(shown.ago(winter, winter.plusSeconds(3 * 86_400)))).isEqualTo("3 days ago");
      assertThat(shown.ago(winter, winter.plusSeconds(90L * 86_400))).isEqualTo("25 Nov 2026");
    }
  }

  @Nested
  class Durations {
    @Test
    void carryTwoUnitsAtMost() {
      assertThat(plain(Shown.duration(42))).isEqualTo("42 s");
      assertThat(plain(Shown.duration(600))).isEqualTo("10 min");
      assertThat(plain(Shown.duration(28 * 3_600 + 1_200))).isEqualTo("28 h 20 min");
      assertThat(plain(Shown.duration(60 * 3_600 + 1_200))).isEqualTo("60 h");
    }

    @Test
    void ofADoubtfulEndAreRoundedAlike() {
      assertThat(plain(shown.durations(161_700, 255_600))).isEqualTo("45 to 71 h");
    }

    @Test
    void thatNeverEndSaySo() {
      assertThat(plain(shown.durations(3_600, Double.POSITIVE_INFINITY)))
          .isEqualTo("1 h or longer");
    }
  }

  @Nested
  class QuantitiesOfTheTrade {
    @Test
    void comeInItsUnits() {
      assertThat(words(242.15, QuantityKind.TEMPERATURE)).isEqualTo("−31.0 °C");
      assertThat(words(8, QuantityKind.PRESSURE)).isEqualTo("8.0 Pa");
      assertThat(words(0.434, QuantityKind.FRACTION)).isEqualTo("43 %");
      assertThat(words(0.004, QuantityKind.FRACTION)).isEqualTo("< 1 %");
      assertThat(words(0.23, QuantityKind.MASS)).isEqualTo("230 g");
      assertThat(words(0.0074, QuantityKind.LENGTH)).isEqualTo("7.4 mm");
      assertThat(words(0.021 / 3_600, QuantityKind.MASS_FLOW)).isEqualTo("21 g/h");
    }

    private String words(double si, QuantityKind kind) {
      return plain(Quantities.words(si, kind));
    }
  }

  private static String plain(String text) {
    return Quantities.plain(text);
  }
}
