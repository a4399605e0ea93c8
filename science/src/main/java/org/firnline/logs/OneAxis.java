package org.firnline.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.SeriesBuilder;
import org.firnline.logs.channel.TimeAxis;

/**
 * Lays the channels of several logs on one time axis: the first log's rows, and rows of the others
 * where it has none. Nothing is interpolated: a row shows the last sample a channel had, if that is
 * no older than its own usual step allows, and is missing otherwise.
 */
final class OneAxis {
  private static final double STEPS_HELD = 1.5;

  private final List<Log> logs;
  private final long[] times;

  /** For logs on one clock, the main one first, each with at least one row. */
  OneAxis(List<Log> logs) {
    this.logs = List.copyOf(logs);
    long[] all = times(logs.get(0));
    for (Log log : logs.subList(1, logs.size())) {
      all = joined(all, log, Math.max(step_ms(logs.get(0)), step_ms(log)));
    }
    this.times = all;
  }

  private static long[] times(Log log) {
    return LongStream.range(0, log.time().size())
        .map(row -> log.time().epochMillis((int) row))
        .toArray();
  }

  private static long step_ms(Log log) {
    int steps = Math.max(1, log.time().size() - 1);
    long[] all = new long[steps];
    for (int i = 0; i < steps && i + 1 < log.time().size(); i++) {
      all[i] = log.time().epochMillis(i + 1) - log.time().epochMillis(i);
    }
    Arrays.sort(all);
    return Math.max(1, all[steps / 2]);
  }

  /** The axis with those times of a log that lie farther than a step from any of its own. */
  private static long[] joined(long[] axis, Log log, long step) {
    List<Long> added = new ArrayList<>();
    int next = 0;
    for (int row = 0; row < log.time().size(); row++) {
      long time = log.time().epochMillis(row);
      while (next < axis.length && axis[next] < time) {
        next++;
      }
      boolean alone =
          (next == axis.length || axis[next] - time > step)
              && (next == 0 || time - axis[next - 1] > step);
      if (alone) {
        added.add(time);
      }
    }
    long[] all = Arrays.copyOf(axis, axis.length + added.size());
    for (int i = 0; i < added.size(); i++) {
      all[axis.length + i] = added.get(i);
    }
    Arrays.sort(all);
    return all;
  }

  /** The one log. */
  Log log() {
    Log first = logs.get(0);
    List<Channel> channels = new ArrayList<>();
    for (List<Source> sources : sources()) {
      Source source = sources.get(0);
      channels.add(named(laid(sources), channels, source.log()));
    }
    List<Marker> markers =
        logs.stream()
            .flatMap(log -> log.markers().stream())
            .sorted(Comparator.comparing(Marker::at).thenComparingLong(Marker::line))
            .distinct()
            .toList();
    List<PreambleEntry> preamble = logs.stream().flatMap(log -> log.preamble().stream()).toList();
    return new Log(first.name(), TimeAxis.of(times), first.basis(), channels, markers, preamble);
  }

  /** A channel of one log. */
  private record Source(Log log, Channel channel) {

    /** Whether another channel is this one going on: same name, role and unit, at another time. */
    boolean goesOnIn(Source other) {
      boolean apart =
          end(log) < other.log.time().epochMillis(0) || end(other.log) < log.time().epochMillis(0);
      return apart
          && channel.name().equals(other.channel.name())
          && channel.role() == other.channel.role()
          && channel.unit().equals(other.channel.unit())
          && channel.labels().isEmpty()
          && other.channel.labels().isEmpty();
    }

    private static long end(Log log) {
      return log.time().epochMillis(log.time().size() - 1);
    }
  }

  private List<List<Source>> sources() {
    List<List<Source>> all = new ArrayList<>();
    for (Log log : logs) {
      for (Channel channel : log.channels()) {
        Source source = new Source(log, channel);
        all.stream()
            .filter(known -> known.stream().allMatch(source::goesOnIn))
            .findFirst()
            .ifPresentOrElse(
                known -> known.add(source), () -> all.add(new ArrayList<>(List.of(source))));
      }
    }
    return all;
  }

  /** Channels keep their names; one that is already taken gets its log's name behind it. */
  private static Channel named(Channel channel, List<Channel> taken, Log log) {
    boolean free = taken.stream().noneMatch(other -> other.name().equals(channel.name()));
    String name = free ? channel.name() : channel.name() + " (" + log.name() + ")";
    return new Channel(
        name,
        channel.role(),
        channel.roleConfidence(),
        channel.unit(),
        channel.unitConfidence(),
        channel.series(),
        channel.labels());
  }

  private Channel laid(List<Source> sources) {
    Channel channel = sources.get(0).channel();
    SeriesBuilder builder = new SeriesBuilder();
    int[] rows = new int[sources.size()];
    long[] held = sources.stream().mapToLong(s -> (long) (STEPS_HELD * step_ms(s.log()))).toArray();
    Arrays.fill(rows, -1);
    for (long time : times) {
      int source = 0;
      boolean known = false;
      for (int i = 0; i < rows.length && !known; i++) {
        TimeAxis axis = sources.get(i).log().time();
        while (rows[i] + 1 < axis.size() && axis.epochMillis(rows[i] + 1) <= time) {
          rows[i]++;
        }
        known = rows[i] >= 0 && time - axis.epochMillis(rows[i]) <= held[i];
        source = i;
      }
      Series from = sources.get(source).channel().series();
      double written = known ? from.asWritten(rows[source]) : Double.NaN;
      if (Double.isNaN(written)) {
        builder.appendWithoutNumber(known ? from.quality(rows[source]) : Quality.MISSING);
      } else {
        builder.append(written, from.quality(rows[source]));
      }
    }
    return new Channel(
        channel.name(),
        channel.role(),
        channel.roleConfidence(),
        channel.unit(),
        channel.unitConfidence(),
        channel.series().likewise(builder),
        channel.labels());
  }
}
