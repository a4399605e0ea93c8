package org.firnline.app.store;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Names and values in one column of text, each percent-encoded. */
final class PairText {
  private PairText() {}

  static String write(Map<String, String> pairs) {
    return new TreeMap<>(pairs)
        .entrySet().stream()
            .map(pair -> encoded(pair.getKey()) + "=" + encoded(pair.getValue()))
            .collect(Collectors.joining("&"));
  }

  static Map<String, String> read(String text) {
    Map<String, String> pairs = new TreeMap<>();
    for (String pair : text.split("&", -1)) {
      int equals = pair.indexOf('=');
      if (equals > 0) {
        pairs.put(decoded(pair.substring(0, equals)), decoded(pair.substring(equals + 1)));
      }
    }
    return pairs;
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }
}
