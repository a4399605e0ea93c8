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

/** Puts files of one logger one behind the other; rows that a later file repeats are left out. */
final class FilesOfOneLogger {

  /**
   * The files as one log.
   *
   * @param log the whole
   * @param repeated rows left out
   */
  record Chained(Log log, int repeated) {}

  /** Chains logs of equal channels that are in order of their first row and hold rows. */
  Chained chain(List<Log> files) {
    if (files.size() == 1) {
      return new Chained(files.get(0), 0);
    }
    List<int[]> rows = new ArrayList<>();
    int repeated = 0;
    long last = Long.MIN_VALUE;
    for (int file = 0; file < files.size(); file++) {
      TimeAxis time = files.get(file).time();
      for (int row = 0; row < time.size(); row++) {
        // Inside one file equal times were already spread; at or before the last one is a repeat.
        if (time.epochMillis(row) <= last) {
          repeated++;
        } else {
          rows.add(new int[] {file, row});
        }
      }
      last = Math.max(last, time.epochMillis(time.size() - 1));
    }
    return new Chained(chained(files, rows), repeated);
  }

  private static Log chained(List<Log> files, List<int[]> rows) {
    Log first = files.get(0);
    long[] times =
        rows.stream().mapToLong(at -> files.get(at[0]).time().epochMillis(at[1])).toArray();
    List<Channel> channels = new ArrayList<>();
    for (int c = 0; c < first.channels().size(); c++) {
      int channel = c;
      List<Channel> parts = files.stream().map(log -> log.channels().get(channel)).toList();
      boolean words = parts.stream().anyMatch(part -> !part.labels().isEmpty());
      channels.add(words ? texts(parts, rows) : numbers(parts, rows));
    }
    List<Marker> markers =
        files.stream()
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
      double written = part.asWritten(at[1]);
      if (Double.isNaN(written)) {
        builder.appendWithoutNumber(part.quality(at[1]));
      } else {
        builder.append(written, part.quality(at[1]));
      }
    }
    return like(parts.get(0), parts.get(0).series().likewise(builder), List.of());
  }

  private static Channel texts(List<Channel> parts, List<int[]> rows) {
    SeriesBuilder builder = new SeriesBuilder();
    Map<String, Integer> codes = new LinkedHashMap<>();
    for (int[] at : rows) {
      Channel part = parts.get(at[0]);
      if (part.series().quality(at[1]) == Quality.GOOD && !part.labels().isEmpty()) {
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
