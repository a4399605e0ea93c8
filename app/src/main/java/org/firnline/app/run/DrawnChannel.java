package org.firnline.app.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;

/**
 * A channel of a log as the picture shows it.
 *
 * @param key its name in the picture's script, {@code c} and its place in the log
 * @param channel the channel
 * @param look how it is drawn
 */
record DrawnChannel(String key, Channel channel, PictureRole look) {

  /** All channels of a log that are drawn, in file order. */
  static List<DrawnChannel> of(Log log) {
    List<DrawnChannel> named = find(log, PictureRole::of);
    return named.isEmpty() ? find(log, PictureRole::ofUnnamed) : named;
  }

  private interface Looks {
    Optional<PictureRole> of(Role role, int nth);
  }

  private static List<DrawnChannel> find(Log log, Looks looks) {
    List<DrawnChannel> drawn = new ArrayList<>();
    Map<Role, Integer> seen = new EnumMap<>(Role.class);
    for (int i = 0; i < log.channels().size(); i++) {
      Channel channel = log.channels().get(i);
      String key = "c" + i;
      looks
          .of(channel.role(), seen.merge(channel.role(), 1, Integer::sum) - 1)
          .ifPresent(look -> drawn.add(new DrawnChannel(key, channel, look)));
    }
    return List.copyOf(drawn);
  }

  PicturePane pane() {
    return look.pane();
  }
}
