package org.firnline.app.reading;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Remembers the answers used last, so that a page and its pictures read a file once.
 *
 * @param <K> what was asked; equal questions have equal keys
 * @param <V> the answer
 */
final class LatestAnswers<K, V> {
  private final Map<K, V> latest;

  LatestAnswers(int kept) {
    this.latest =
        new LinkedHashMap<>(kept * 2, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > kept;
          }
        };
  }

  /** The remembered answer, or a fresh one; one question is worked on at a time. */
  synchronized V get(K question, Supplier<V> work) {
    V known = latest.get(question);
    if (known != null) {
      return known;
    }
    V fresh = work.get();
    latest.put(question, fresh);
    return fresh;
  }
}
