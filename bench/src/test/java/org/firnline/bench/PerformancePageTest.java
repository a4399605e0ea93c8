package org.firnline.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PerformancePageTest {
  private static final String LOGS = "org.firnline.bench.LogReading";

  private final PerformancePage page =
      new PerformancePage(new Machine(2, "some Java", "some system", 0.25), "2026-11-25");

  @Test
  void showsBothFiguresPerCountedThingAndTheirRatio() {
    String text =
        page.of(
            List.of(
                new Measured(LOGS, "baseline", 20, 0.5), new Measured(LOGS, "firnline", 5, 0.25)));
    assertThat(text)
        .contains("| 3 500 000 ± 175 000 | 14 000 000 ± 350 000 | 0.250 |")
        .contains("2 cores, some Java, some system, load before 0.3. Day: 2026-11-25.");
  }

  @Test
  void refusesAQuestionWithoutItsBaseline() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> page.of(List.of(new Measured(LOGS, "firnline", 5, 0.25))))
        .withMessageContaining("LogReading.baseline was not measured");
  }

  @Test
  void readsWhatJmhWrites(@TempDir Path folder) throws IOException {
    Path json = folder.resolve("results.json");
    Files.writeString(
        json,
        """
        [
            {
                "jmhVersion" : "1.37",
                "benchmark" : "org.firnline.bench.LogReading.firnline",
                "mode" : "thrpt",
                "primaryMetric" : {
                    "score" : 5.25,
                    "scoreError" : "NaN",
                    "scoreUnit" : "ops/s"
                },
                "secondaryMetrics" : {
                }
            }
        ]
        """);
    Measured read = Measured.readAll(json).get(0);
    assertThat(read.type()).isEqualTo(LOGS);
    assertThat(read.method()).isEqualTo("firnline");
    assertThat(read.perSecond()).isEqualTo(5.25);
    assertThat(read.doubt()).isNaN();
  }
}
