package org.firnline.logs;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.TimeAxis;

/**
 * What any log file becomes.
 *
 * @param name where it came from, usually the file name
 * @param time when each row was taken, UTC
 * @param basis how the times came about: zone, rule, whether the start is known
 * @param channels the columns in file order
 * @param markers events, comments, steps and states in time order
 * @param preamble key and value lines the file holds before its table, in file order
 */
public record Log(
    String name,
    TimeAxis time,
    TimeBasis basis,
    List<Channel> channels,
    List<Marker> markers,
    List<PreambleEntry> preamble) {

  public Log {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(basis, "basis");
    channels = List.copyOf(channels);
    markers = List.copyOf(markers);
    preamble = List.copyOf(preamble);
    for (Channel channel : channels) {
      if (channel.series().size() != time.size()) {
        throw new IllegalArgumentException(
            "channel "
                + channel.name()
                + " has "
                + channel.series().size()
                + " samples but the log has "
                + time.size()
                + " rows; give every channel one sample per row, missing where there is none");
      }
    }
  }

  /** All channels in a role, in file order. */
  public List<Channel> channelsIn(Role role) {
    return channels.stream().filter(channel -> channel.role() == role).toList();
  }

  /** The first channel in a role. */
  public Optional<Channel> findChannelIn(Role role) {
    return channels.stream().filter(channel -> channel.role() == role).findFirst();
  }

  /** First row's time; empty for a log without rows. */
  public Optional<Instant> start() {
    return time.size() == 0 ? Optional.empty() : Optional.of(time.instant(0));
  }

  /** Last row's time; empty for a log without rows. */
  public Optional<Instant> end() {
    return time.size() == 0 ? Optional.empty() : Optional.of(time.instant(time.size() - 1));
  }
}
