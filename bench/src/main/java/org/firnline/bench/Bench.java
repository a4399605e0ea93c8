package org.firnline.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmarks and writes {@code docs/performance.md}. Arguments: {@code --date 2026-11-25},
 * the day that is written into the page; {@code --only REGEX}, some questions, which prints the
 * table and leaves the page alone.
 */
public final class Bench {
  private static final Path PAGE = Path.of("docs", "performance.md");
  private static final Path MEASURED = Path.of("bench", "target", "performance.json");

  private Bench() {}

  public static void main(String[] arguments) throws IOException, RunnerException {
    String date = valueOf("--date", arguments, "day not given");
    String only = valueOf("--only", arguments, "");
    Files.createDirectories(MEASURED.getParent());
    Machine machine = Machine.here();
    measure(only);
    String page = new PerformancePage(machine, date).of(Measured.readAll(MEASURED));
    if (only.isEmpty()) {
      Files.writeString(PAGE, page);
    }
    System.out.printf(Locale.ROOT, "%n%s%n", page);
  }

  private static void measure(String only) throws RunnerException {
    ChainedOptionsBuilder options =
        new OptionsBuilder().resultFormat(ResultFormatType.JSON).result(MEASURED.toString());
    new Runner((only.isEmpty() ? options : options.include(only)).build()).run();
  }

  private static String valueOf(String name, String[] arguments, String otherwise) {
    for (int i = 0; i < arguments.length - 1; i++) {
      if (arguments[i].equals(name)) {
        return arguments[i + 1];
      }
    }
    return otherwise;
  }
}
