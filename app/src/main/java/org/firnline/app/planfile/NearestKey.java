package org.firnline.app.planfile;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the key somebody probably meant: the fewest letters to change, at most half of them. */
final class NearestKey {
  private NearestKey() {}

  static Optional<String> among(Collection<String> known, String typed) {
    String wanted = typed.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    return known.stream()
        .min(Comparator.comparingInt(key -> changes(key, wanted)))
        .filter(key -> changes(key, wanted) <= Math.max(2, key.length() / 2));
  }

  /** Levenshtein distance, row by row. */
  private static int changes(String from, String to) {
    int[] above = new int[to.length() + 1];
    for (int j = 0; j <= to.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int[] row = new int[to.length() + 1];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int substitution = above[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(substitution, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[to.length()];
  }
}
