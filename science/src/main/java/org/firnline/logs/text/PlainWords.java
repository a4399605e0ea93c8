package org.firnline.logs.text;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words of any language brought to one plain spelling, so that tables of words stay short. */
public final class PlainWords {
  private PlainWords() {}

  /** Lower case without accents: "Fläche" becomes "flache", "°C" stays "°c". */
  public static String fold(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    for (int i = 0; i < lower.length(); i++) {
      if (lower.charAt(i) > 127) {
        return Normalizer.normalize(lower.replace("ß", "ss"), Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .replace('μ', 'µ');
      }
    }
    return lower;
  }

  /**
   * The words of a name, folded: split at signs, between letters and digits, and before capitals:
   * "T_shelfIn2" becomes t, shelf, in, 2.
   */
  public static List<String> split(String name) {
    List<String> words = new ArrayList<>();
    String spaced =
        name.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ")
            .replaceAll("(?<=\\p{L})(?=\\d)|(?<=\\d)(?=\\p{L})", " ");
    for (String word : fold(spaced).split("[^\\p{L}\\p{N}°µ%#]+", -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }
}
