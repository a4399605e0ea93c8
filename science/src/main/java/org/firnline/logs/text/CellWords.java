package org.firnline.logs.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firnline.logs.channel.Quality;

/**
 * Small tables that ship with the program: plain comma-separated lines, hash and space for remarks.
 */
public final class CellWords {
  private CellWords() {}

  /** Words that stand in a number's place, in lower case, and what they say. */
  public static Map<String, Quality> load() {
    Map<String, Quality> words = new HashMap<>();
    for (List<String> row : rows(CellWords.class, "words.csv")) {
      words.put(row.get(0), Quality.valueOf(row.get(1)));
    }
    return words;
  }

  /** The rows of a shipped table without its header. */
  public static List<List<String>> rows(Class<?> beside, String name) {
    List<List<String>> rows = new ArrayList<>();
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("shipped table " + name + " is missing beside " + beside);
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      reader
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("# "))
          .skip(1)
          .forEach(line -> rows.add(List.of(line.split(",", -1))));
    } catch (IOException e) {
      throw new UncheckedIOException("shipped table " + name, e);
    }
    return rows;
  }
}
