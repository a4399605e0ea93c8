package org.firnline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CareCommandTest {
  private static final Instant START = Instant.parse("2025-01-06T07:00:00Z");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int type(String... words) {
    CommandLine command = FirnlineCommand.commandLine();
    command.setOut(new PrintWriter(out));
    command.setErr(new PrintWriter(err));
    return command.execute(words);
  }

  /** A chamber that is pumped at a rate which falls from the twentieth run on. */
  private static void write(Path folder, int run) throws IOException {
    double rate = 0.012 * (1 + 0.01 * (run % 3 - 1)) / (1 + 0.06 * Math.max(0, run - 19));
    StringBuilder text = new StringBuilder("time,shelf (degC),chamber capacitance (Pa)\n");
    for (int second = 0; second < 4 * 3600; second += 30) {
      double pressure =
          second < 1800 || second > 4 * 3600 - 300
              ? 100_000
              : Math.max(8, 100_000 * Math.exp(-rate * (second - 1800)));
      text.append(START.plus(Duration.ofDays(7L * run)).plusSeconds(second));
      text.append(",-20,").append(pressure).append('\n');
    }
    String name = "run-" + (100 + run) + ".csv";
    Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
  }

  @Test
  void findsAPumpThatSlowsDown(@TempDir Path folder) throws IOException {
    for (int run = 0; run < 32; run++) {
      write(folder, run);
    }
    assertThat(type("care", folder.toString())).isEqualTo(FirnlineCommand.STOP_LINE);
    assertThat(out.toString()).contains("Pump-down to 100 Pa", "rose since", "Look first");
    out.getBuffer().setLength(0);
    assertThat(type("care", folder.toString(), "--json")).isEqualTo(FirnlineCommand.STOP_LINE);
    assertThat(out.toString()).contains("\"pump-wears\"", "\"since_utc\"");
  }

  @Test
  void saysWhenThereAreTooFewRunsOrNone(@TempDir Path folder) throws IOException {
    assertThat(type("care", folder.toString())).isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(type("care", folder.resolve("nowhere").toString()))
        .isEqualTo(FirnlineCommand.BAD_INPUT);
    write(folder, 0);
    Files.writeString(folder.resolve("notes.txt"), "nothing of use\n", StandardCharsets.UTF_8);
    assertThat(type("care", folder.toString())).isZero();
    assertThat(out.toString()).contains("Fewer than eight runs", "Pump-down", "notes.txt");
  }
}
