package org.firnline.drying.cycle;

import java.util.List;

/**
 * A simulated cycle as a dryer would have logged it.
 *
 * @param times s, rising
 * @param channels set point, shelf, both gauges, watched products, collector, vapor rate
 */
public record CycleLog(List<Double> times, List<LoggedChannel> channels) {

  public CycleLog {
    times = List.copyOf(times);
    channels = List.copyOf(channels);
  }

  /**
   * The channel of one kind.
   *
   * @param number of the watched vessel; 0 for channels that exist once
   */
  public LoggedChannel channel(LoggedChannel.Kind kind, int number) {
    return channels.stream()
        .filter(channel -> channel.kind() == kind && channel.number() == number)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no channel " + kind + " " + number));
  }
}
