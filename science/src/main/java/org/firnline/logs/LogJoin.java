package org.firnline.logs;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.TimeAxis;

/**
 * Joins the logs of one run that lie in several files. Files of one logger, told by equal channels,
 * are put one behind the other and what a later one repeats is left out. Logs of different loggers
 * are laid on one time axis, after the offset between their clocks was estimated from an edge that
 * both saw.
 */
public final class LogJoin {
  private static final int MOST_COMPARED = 12;

  /**
   * The joined log.
   *
   * @param log the whole run
   * @param repeated rows left out because an earlier file holds them
   * @param offsets how the loggers' clocks stand to the main one's
   */
  public record Joined(Log log, int repeated, List<ClockOffset> offsets) {
    public Joined {
      offsets = List.copyOf(offsets);
    }
  }

  /** Joins logs, their clocks judged by what they saw. */
  public Joined join(List<Log> logs) {
    return join(logs, Map.of());
  }

  /**
   * Joins logs.
   *
   * @param logs at least one log
   * @param decided by how much a logger's clock is known to be ahead, by name of its log
   * @throws IllegalArgumentException if there is no log
   */
  public Joined join(List<Log> logs, Map<String, Duration> decided) {
    if (logs.isEmpty()) {
      throw new IllegalArgumentException("no log to join: give at least one");
    }
    Map<List<String>, List<Log>> loggers = new LinkedHashMap<>();
    logs.stream()
        .filter(log -> log.time().size() > 0)
        .sorted(Comparator.comparing(log -> log.time().epochMillis(0)))
        .forEach(
            log ->
                loggers
                    .computeIfAbsent(
                        log.channels().stream().map(Channel::name).toList(),
                        names -> new ArrayList<>())
                    .add(log));
    if (loggers.isEmpty()) {
      return new Joined(logs.get(0), 0, List.of());
    }
    int repeated = 0;
    List<Log> whole = new ArrayList<>();
    for (List<Log> files : loggers.values()) {
      FilesOfOneLogger.Chained chained = new FilesOfOneLogger().chain(files);
      repeated += chained.repeated();
      whole.add(chained.log());
    }
    return whole.size() == 1
        ? new Joined(whole.get(0), repeated, List.of())
        : together(whole, repeated, decided);
  }

  private static Joined together(List<Log> loggers, int repeated, Map<String, Duration> decided) {
    int mainPlace = main(loggers);
    Log main = loggers.get(mainPlace);
    List<ClockOffset> offsets = new ArrayList<>();
    List<Log> aligned = new ArrayList<>(List.of(main));
    for (int i = 0; i < loggers.size(); i++) {
      Log log = loggers.get(i);
      if (i != mainPlace && log.name().equals(main.name())) {
        aligned.add(log); // another table of the same file has the same clock
      } else if (i != mainPlace) {
        ClockOffset offset =
            offsets.size() < MOST_COMPARED || decided.containsKey(log.name())
                ? offset(main, log, decided)
                : notCompared(main, log);
        offsets.add(offset);
        aligned.add(shifted(log, offset.ahead()));
      }
    }
    return new Joined(new OneAxis(aligned).log(), repeated, offsets);
  }

  /** Place of the logger with the finest steps among those that saw half of the longest span. */
  private static int main(List<Log> loggers) {
    double longest = loggers.stream().mapToDouble(log -> log.time().duration_s()).max().orElse(0);
    Comparator<Integer> finest =
        Comparator.comparing((Integer i) -> !loggers.get(i).basis().startKnown())
            .thenComparingDouble(
                i -> loggers.get(i).time().duration_s() / loggers.get(i).time().size());
    return IntStream.range(0, loggers.size())
        .boxed()
        .filter(i -> loggers.get(i).time().duration_s() >= longest / 2)
        .min(finest)
        .orElse(0);
  }

  private static ClockOffset notCompared(Log main, Log log) {
    return new ClockOffset(
        log.name(),
        main.name(),
        Duration.ZERO,
        "only " + MOST_COMPARED + " loggers are compared; this clock is taken to agree",
        Confidence.LOW);
  }

  private static ClockOffset offset(Log main, Log log, Map<String, Duration> decided) {
    Duration known = decided.get(log.name());
    return known == null
        ? new SharedEdge(main, log).estimate()
        : new ClockOffset(log.name(), main.name(), known, "chosen by a person", Confidence.HIGH);
  }

  private static Log shifted(Log log, Duration ahead) {
    if (ahead.isZero()) {
      return log;
    }
    long[] times = new long[log.time().size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = log.time().epochMillis(i) - ahead.toMillis();
    }
    List<Marker> markers =
        log.markers().stream()
            .map(m -> new Marker(m.at().minus(ahead), m.line(), m.kind(), m.text()))
            .toList();
    return new Log(
        log.name(), TimeAxis.of(times), log.basis(), log.channels(), markers, log.preamble());
  }
}
