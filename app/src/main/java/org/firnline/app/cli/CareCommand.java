package org.firnline.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.firnline.app.care.CareJson;
import org.firnline.app.care.CareReport;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.care.CareFigures;
import org.firnline.care.CarePoint;
import org.firnline.care.ControlChart;
import org.firnline.care.DryerHealth;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code firnline care}: the health of a dryer from a folder of its logs. */
@Command(
    name = "care",
    mixinStandardHelpOptions = true,
    description = {
      "Reads all logs of one dryer and says how its health has gone: pump-down, collector, gauges.",
      "A change is given with its date and where to look first; eight runs are needed."
    })
final class CareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FOLDER", description = "A folder with the logs of one dryer.")
  private Path folder = Path.of("");

  @Option(names = "--json", description = "Answer in JSON, SI units in the keys.")
  private boolean json;

  CareCommand() {}

  @Override
  public Integer call() {
    List<CarePoint> points = new ArrayList<>();
    List<String> silent = new ArrayList<>();
    for (Path file : logs()) {
      List<CarePoint> own =
          new LogReader()
              .read(GivenFile.name(file), GivenFile.bytes(file))
              .log()
              .map((Log log) -> CareFigures.of(log))
              .orElse(List.of());
      points.addAll(own);
      if (own.isEmpty()) {
        silent.add(GivenFile.name(file));
      }
    }
    DryerHealth health = DryerHealth.of(points);
    PrintWriter out = spec.commandLine().getOut();
    Words words = Words.in(Locale.ENGLISH);
    out.println(
        json
            ? JsonText.of(CareJson.of(points, health, silent))
            : new CareReport(words, new Shown(ZoneId.of("UTC"))).of(points, health, silent));
    out.flush();
    boolean worse =
        health.charts().stream()
            .flatMap(chart -> chart.change().stream())
            .anyMatch(ControlChart.Change::worse);
    return worse ? FirnlineCommand.STOP_LINE : FirnlineCommand.FINE;
  }

  private List<Path> logs() {
    if (!Files.isDirectory(folder)) {
      throw new BadInput(folder + ": there is no such folder. Give the folder of a dryer's logs.");
    }
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> logs =
          files.filter(Files::isRegularFile).sorted(Comparator.naturalOrder()).toList();
      if (logs.isEmpty()) {
        throw new BadInput(folder + ": holds no file. Give the folder of a dryer's logs.");
      }
      return logs;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
