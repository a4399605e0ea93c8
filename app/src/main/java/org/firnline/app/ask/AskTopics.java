package org.firnline.app.ask;

import java.util.List;
import java.util.Optional;

/** The questions, in the order in which people meet them. */
public final class AskTopics {
  private static final List<AskTopic> ALL =
      List.of(
          new LayerTopic(),
          new TimeTopic(),
          new PressureTopic(),
          new CollectorTopic(),
          new FailureTopic());

  private AskTopics() {}

  /** All of them. */
  public static List<AskTopic> all() {
    return ALL;
  }

  /** The one behind a word. */
  public static Optional<AskTopic> find(String key) {
    return ALL.stream().filter(topic -> topic.key().equals(key)).findFirst();
  }
}
