package org.firnline.app.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import org.firnline.logs.channel.Channel;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ChannelFileTest {
  private static final String FILE =
      """
      time_utc,shelf_C,product1_C,pressure_mbar,state
      2026-10-12T08:00:00Z,-40.0,-39.6,0.081,"freezing, slow"
      2026-10-12T08:01:00Z,-40.1,,0.080,=1+1
      2026-10-12T08:02:00Z,-40.2,-39.4,0.079,=1+1
      2026-10-12T08:03:00Z,-40.3,-39.3,0.078,=1+1
      """;

  private final Log log = read(FILE);

  private static Log read(String text) {
    return new LogReader().read("a.csv", text.getBytes(StandardCharsets.UTF_8)).log().orElseThrow();
  }

  private String csv(Set<String> keys, boolean si, int from, int to) throws IOException {
    StringWriter out = new StringWriter();
    new ChannelFile(log, keys, si, from, to).csv(out);
    return out.toString();
  }

  @Nested
  class AsCommaSeparatedText {
    @Test
    void statesUnitsInItsHeadingAndTimesInUtc() throws IOException {
      assertThat(csv(Set.of(), false, 0, 2).lines())
          .containsExactly(
              "time_utc,elapsed_s,shelf_C [degC],product1_C [degC],pressure_mbar [Pa]",
              "2026-10-12T08:00:00Z,0,-40,-39.6,8.1",
              "2026-10-12T08:01:00Z,60,-40.1,,8");
    }

    /** The reader is another program than the writer: what it reads is what was in the log. */
    @Test
    void readsBackAsTheSameValues() throws IOException {
      for (boolean si : List.of(true, false)) {
        Log again = read(csv(Set.of(), si, 0, 4));
        for (Channel channel : DrawnChannel.of(log).stream().map(DrawnChannel::channel).toList()) {
          Channel read =
              again.channels().stream()
                  .filter(c -> c.name().equals(channel.name()))
                  .findFirst()
                  .orElseThrow();
          for (int row = 0; row < 4; row++) {
            double value = channel.series().value(row);
            if (Double.isNaN(value)) {
              assertThat(read.series().value(row)).isNaN();
            } else {
              assertThat(read.series().value(row)).isCloseTo(value, within(1e-6));
            }
          }
        }
      }
    }

    @Test
    void keepsNumbersNumbersAndTextThatLooksLikeAFormulaText() throws IOException {
      String all = csv(Set.of("all"), true, 0, 2);
      assertThat(all).contains("\"freezing, slow\"", ",'=1+1").contains(",233.15,");
      assertThat(ChannelFile.cell("-5 bar line")).isEqualTo("'-5 bar line");
      assertThat(ChannelFile.cell("@sum")).isEqualTo("'@sum");
      assertThat(ChannelFile.cell("+a \"b\"")).isEqualTo("\"'+a \"\"b\"\"\"");
      assertThat(ChannelFile.cell("")).isEmpty();
    }

    @Test
    void holdsOnlyTheChannelsAskedFor() throws IOException {
      String key = DrawnChannel.of(log).get(0).key();
      assertThat(csv(Set.of(key), false, 3, 4).lines())
          .containsExactly("time_utc,elapsed_s,shelf_C [degC]", "2026-10-12T08:03:00Z,180,-40.3");
    }
  }

  @Test
  void as_json_times_stand_once_and_missing_samples_are_null() throws IOException {
    StringWriter out = new StringWriter();
    new ChannelFile(log, Set.of("all"), true, 0, 2).json(out, "a \"run\"");
    JsonNode json = JsonMapper.shared().readTree(out.toString());
    assertThat(json.get("run").stringValue()).isEqualTo("a \"run\"");
    assertThat(json.get("start_utc").stringValue()).isEqualTo("2026-10-12T08:00:00Z");
    assertThat(json.get("elapsed_s").size()).isEqualTo(2);
    JsonNode product = json.get("channels").get(1);
    assertThat(product.get("unit").stringValue()).isEqualTo("K");
    assertThat(product.get("values").get(0).doubleValue()).isCloseTo(233.55, within(1e-9));
    assertThat(product.get("values").get(1).isNull()).isTrue();
    assertThat(json.get("channels").get(3).get("values").get(0).stringValue())
        .isEqualTo("freezing, slow");
  }

  @Test
  void a_log_without_a_start_gives_seconds_only() throws IOException {
    Log unknown = read("Elapsed;Shelf C;P mTorr\n23:59:00;-20.0;75\n24:00:00;-20.0;75\n");
    StringWriter out = new StringWriter();
    new ChannelFile(unknown, Set.of(), false, 0, 2).csv(out);
    assertThat(out.toString()).startsWith("elapsed_s,").contains("\r\n60,-20,");
  }
}
