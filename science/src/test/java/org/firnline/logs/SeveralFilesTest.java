package org.firnline.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** R-IMP-18 and X27: the files of one run become one log on one clock. */
class SeveralFilesTest {
  private static final Instant START = Instant.parse("2026-10-12T23:00:00Z");

  private static GivenLog file(String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new GivenLog(name, () -> new ByteArrayInputStream(bytes));
  }

  private static Reading read(GivenLog... files) {
    return new LogReader().read(List.of(files), ReadingChoices.none());
  }

  @Nested
  class X27_daily_files_that_overlap {
    private static String rows(String from, String to) {
      StringBuilder text = new StringBuilder("time_utc,shelf_C,p_mbar\n");
      Instant end = Instant.parse(to);
      for (Instant at = Instant.parse(from); !at.isAfter(end); at = at.plusSeconds(10)) {
        text.append(at).append(",-40.0,0.081\n");
      }
      return text.toString();
    }

    @Test
    void are_one_log_and_the_five_repeated_rows_are_left_out() {
      Reading reading =
          read(
              file("fen_13.csv", rows("2026-10-12T23:59:50Z", "2026-10-13T01:00:00Z")),
              file("fen_12.csv", rows("2026-10-12T23:00:00Z", "2026-10-13T00:00:30Z")));
      Log log = reading.log().orElseThrow();
      assertThat(log.time().duration_s()).isEqualTo(7200);
      assertThat(log.time().size()).isEqualTo(721);
      assertThat(reading.guesses())
          .anyMatch(
              guess ->
                  guess.what().equals("rows in several files")
                      && guess.value().equals("5 left out"));
      assertThat(reading.rows().kept()).isEqualTo(721);
    }
  }

  /** Two loggers on one dryer; the second one's clock is wrong and its steps are coarser. */
  private static final class TwoLoggers {
    private static double pressure(double t) {
      double pumped = t < 3600 ? 1000 : 1000 * Math.exp(-(t - 3600) / 120) + 0.08;
      return t > 14_000 && t < 14_200 ? pumped + 4 : pumped;
    }

    private static double shelf(double t) {
      double ramp = Math.min(1, Math.max(0, (t - 5000) / 3600));
      return -40 + 20 * ramp + (t > 14_000 && t < 14_200 ? 1.5 : 0);
    }

    static String main() {
      Random noise = new Random(18);
      StringBuilder text = new StringBuilder("time_utc,shelf_C,p_mbar,collector_C\n");
      for (int t = 0; t < 24_000; t += 10) {
        text.append(
            String.format(
                Locale.ROOT,
                "%s,%.2f,%.4f,%.1f\n",
                START.plusSeconds(t),
                shelf(t) + 0.05 * noise.nextGaussian(),
                pressure(t) * (1 + 0.005 * noise.nextGaussian()),
                -60 + 0.2 * noise.nextGaussian()));
      }
      return text.toString();
    }

    static String second(long ahead_s, boolean gauge) {
      Random noise = new Random(27);
      StringBuilder text =
          new StringBuilder(gauge ? "time_utc,Pirani mbar,TC1 C\n" : "time_utc,TC1 C,TC2 C\n");
      for (int t = 300; t < 22_000; t += 30) {
        text.append(START.plusSeconds(t + ahead_s));
        if (gauge) {
          double reads = 1.5 * pressure(t) * (1 + 0.02 * noise.nextGaussian());
          text.append(String.format(Locale.ROOT, ",%.4f", reads));
        } else {
          text.append(String.format(Locale.ROOT, ",%.2f", 10 * noise.nextGaussian()));
        }
        text.append(
            String.format(Locale.ROOT, ",%.2f\n", shelf(t - 60) - 6 + 0.1 * noise.nextGaussian()));
      }
      return text.toString();
    }
  }

  @Nested
  class R_IMP_18_two_loggers_whose_clocks_differ {
    private Guess clock(Reading reading) {
      return reading.guesses().stream()
          .filter(guess -> guess.choice().equals("clockOffset:second.csv"))
          .findFirst()
          .orElseThrow();
    }

    private Log log(long ahead_s, boolean gauge) {
      return new LogReader()
          .read("second.csv", TwoLoggers.second(ahead_s, gauge).getBytes(StandardCharsets.UTF_8))
          .log()
          .orElseThrow();
    }

    private Log main() {
      byte[] bytes = TwoLoggers.main().getBytes(StandardCharsets.UTF_8);
      return new LogReader().read("main.csv", bytes).log().orElseThrow();
    }

    @Test
    void are_brought_together_by_the_edge_that_both_saw() {
      Log main = main();
      for (long ahead : new long[] {-3600, -447, 754, 7200}) {
        LogJoin.Joined joined = new LogJoin().join(List.of(main, log(ahead, true)));
        ClockOffset offset = joined.offsets().get(0);
        assertThat((double) offset.ahead().toSeconds()).isCloseTo(ahead, within(30.0));
        assertThat(offset.confidence()).isNotEqualTo(Confidence.LOW);
      }
    }

    @Test
    void show_the_offset_and_why() {
      Reading reading =
          read(
              file("main.csv", TwoLoggers.main()),
              file("second.csv", TwoLoggers.second(754, true)));
      assertThat(clock(reading).value()).contains("ahead");
      assertThat(clock(reading).reason()).contains("fall together");
      Log log = reading.log().orElseThrow();
      assertThat(log.channelsIn(Role.PRODUCT)).hasSize(1);
      assertThat(log.channels()).anyMatch(channel -> channel.name().equals("Pirani"));
      assertThat(log.time().size()).isEqualTo(2400);
    }

    @Test
    void agree_where_nothing_is_off() {
      ClockOffset offset = new LogJoin().join(List.of(main(), log(0, true))).offsets().get(0);
      assertThat(offset.ahead()).isEqualTo(Duration.ZERO);
    }

    @Test
    void follow_what_a_person_says() {
      Map<String, Duration> said = Map.of("second.csv", Duration.ofSeconds(61));
      LogJoin.Joined joined = new LogJoin().join(List.of(main(), log(0, true)), said);
      assertThat(joined.offsets().get(0).ahead()).isEqualTo(Duration.ofSeconds(61));
      assertThat(joined.offsets().get(0).reason()).contains("chosen");
    }

    @Test
    void stay_as_they_are_when_nothing_shows() {
      StringBuilder flat = new StringBuilder("time_utc,TC9 C\n");
      for (int t = 0; t < 20_000; t += 60) {
        flat.append(START.plusSeconds(t)).append(",-30.0\n");
      }
      byte[] bytes = flat.toString().getBytes(StandardCharsets.UTF_8);
      Log other = new LogReader().read("second.csv", bytes).log().orElseThrow();
      ClockOffset offset = new LogJoin().join(List.of(main(), other)).offsets().get(0);
      assertThat(offset.confidence()).isEqualTo(Confidence.LOW);
      assertThat(offset.ahead()).isEqualTo(Duration.ZERO);
    }
  }

  @Nested
  class Files_that_go_on_with_other_columns {
    @Test
    void keep_like_channels_in_one() {
      List<String> first = new ArrayList<>();
      List<String> second = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        first.add(START.plusSeconds(60L * i) + ",-40.0,0.08");
        second.add(START.plusSeconds(600 + 60L * i) + ",-30.0,0.09,-55");
      }
      Reading reading =
          read(
              file("a.csv", "time_utc,shelf_C,p_mbar\n" + String.join("\n", first) + "\n"),
              file(
                  "b.csv",
                  "time_utc,shelf_C,p_mbar,collector_C\n" + String.join("\n", second) + "\n"));
      Log log = reading.log().orElseThrow();
      assertThat(log.time().size()).isEqualTo(10);
      assertThat(log.channelsIn(Role.SHELF)).hasSize(1);
      assertThat(log.channelsIn(Role.SHELF).get(0).series().goodCount()).isEqualTo(10);
      assertThat(log.channelsIn(Role.COLLECTOR).get(0).series().goodCount()).isEqualTo(5);
    }
  }

  @Test
  void no_file_is_no_question() {
    assertThatThrownBy(() -> new LogReader().read(List.of(), ReadingChoices.none()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LogJoin().join(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void files_without_a_log_say_why() {
    Reading reading = read(file("a.csv", ""), file("b.csv", "words only\n"));
    assertThat(reading.log()).isEmpty();
    assertThat(reading.problems()).hasSize(2);
  }
}
