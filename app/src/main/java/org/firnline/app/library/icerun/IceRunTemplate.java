package org.firnline.app.library.icerun;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.firnline.app.words.Words;

/** The empty sheet of an ice run. */
final class IceRunTemplate {
  private static final int ROWS = 24;

  private IceRunTemplate() {}

  /** Lines of the upper part, as keys of the bundle. */
  static List<String> lines() {
    return Arrays.stream(SheetKey.values()).map(SheetKey::word).toList();
  }

  /** Numbers of the vessels on the printed sheet. */
  static List<Integer> rows() {
    return IntStream.rangeClosed(1, ROWS).boxed().toList();
  }

  /** The sheet as text, each line with an example behind a mark that keeps it from being read. */
  static String text(Words words) {
    StringBuilder text = new StringBuilder();
    for (SheetKey key : SheetKey.values()) {
      String example = words.say("icerun.example." + key.word());
      text.append("# ").append(words.say("icerun.for-example", example)).append('\n');
      text.append(key.text()).append(",\n");
    }
    text.append("vessel,position,before (g),after (g)\n");
    return text.toString();
  }
}
