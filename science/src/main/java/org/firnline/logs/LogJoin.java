package org.firnline.logs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.SeriesBuilder;
import org.firnline.logs.channel.TimeAxis;

/**
 * Joins the logs of one run that lie in several files: in time order, rows that a later file
 * repeats left out. The files must come from one logger: the same channels in the same order.
 */
public final class LogJoin {

  /**
   * The joined log and how many rows were repeated.
   *
   * @param log the whole run
   * @param repeated rows left out because an earlier file holds them
   */
  public record Joined(Log log, int repeated) {}

  /**
   * Joins logs.
   *
   * @param logs at least one log; those with other channels than the first are refused
   * @throws IllegalArgumentException if there is no log, or if channels differ
   */
  public Joined join(List<Log> logs) {
    if (logs.isEmpty()) {
      throw new IllegalArgumentException("no log to join: give at least one");
    }
    List<Log> ordered =
        logs.stream()
            .filter(log -> log.time().size() > 0)
            .sorted(Comparator.comparing(log -> log.time().epochMillis(0)))
            .toList();
    Log first = ordered.isEmpty() ? logs.get(0) : ordered.get(0);
    ordered.forEach(log -> requireSameChannels(first, log));
    List<int[]> rows = new ArrayList<>();
    int repeated = 0;
    long last = Long.MIN_VALUE;
    for (int file = 0; file < ordered.size(); file++) {
      TimeAxis time = ordered.get(file).time();
      for (int row = 0; row < time.size(); row++) {
        // Inside one file equal times were already spread; at or before the last one is a repeat.
        if (time.epochMillis(row) <= last) {
          repeated++;
        } else {
          rows.add(new int[] {file, row});
        }
      }
      last = Math.max(last, time.size() == 0 ? last : time.epochMillis(time.size() - 1));
    }
    return new Joined(joined(first, ordered, rows), repeated);
  }

  private static void requireSameChannels(Log first, Log other) {
    List<String> wanted = first.channels().stream().map(Channel::name).toList();
    List<String> found = other.channels().stream().map(Channel::name).toList();
    if (!wanted.equals(found)) {
      throw new IllegalArgumentException(
          other.name()
              + " has channels "
              + found
              + " but "
              + first.name()
              + " has "
              + wanted
              + ": only files of one logger can be joined");
    }
  }

  private static Log joined(Log first, List<Log> logs, List<int[]> rows) {
    long[] times =
        rows.stream().mapToLong(at -> logs.get(at[0]).time().epochMillis(at[1])).toArray();
    List<Channel> channels = new ArrayList<>();
    for (int c = 0; c < first.channels().size(); c++) {
      int channel = c;
      List<Channel> parts = logs.stream().map(log -> log.channels().get(channel)).toList();
      channels.add(
          first.channels().get(c).labels().isEmpty() ? numbers(parts, rows) : texts(parts, rows));
    }
    List<Marker> markers =
        logs.stream()
            .flatMap(log -> log.markers().stream())
            .sorted(Comparator.comparing(Marker::at))
            .distinct()
            .toList();
    return new Log(
        first.name(), TimeAxis.of(times), first.basis(), channels, markers, first.preamble());
  }

  private static Channel numbers(List<Channel> parts, List<int[]> rows) {
    SeriesBuilder builder = new SeriesBuilder();
    for (int[] at : rows) {
      Series part = parts.get(at[0]).series();
      builder.append(part.asWritten(at[1]), part.quality(at[1]));
    }
    return like(parts.get(0), parts.get(0).series().likewise(builder), List.of());
  }

  private static Channel texts(List<Channel> parts, List<int[]> rows) {
    SeriesBuilder builder = new SeriesBuilder();
    Map<String, Integer> codes = new LinkedHashMap<>();
    for (int[] at : rows) {
      Channel part = parts.get(at[0]);
      if (part.series().quality(at[1]) == Quality.GOOD) {
        String label = part.labels().get((int) part.series().value(at[1]));
        codes.putIfAbsent(label, codes.size());
        builder.append(codes.getOrDefault(label, 0), 0, Quality.GOOD);
      } else {
        builder.appendWithoutNumber(Quality.MISSING);
      }
    }
    return like(parts.get(0), builder.build(1, 0), List.copyOf(codes.keySet()));
  }

  private static Channel like(Channel channel, Series series, List<String> labels) {
    return new Channel(
        channel.name(),
        channel.role(),
        channel.roleConfidence(),
        channel.unit(),
        channel.unitConfidence(),
        series,
        labels);
  }
}
