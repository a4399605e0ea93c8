package org.firnline.app.planfile;

import java.util.Locale;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Words;
import org.firnline.planning.CheckLine;
import org.firnline.planning.Figure;
import org.firnline.planning.Unknown;

/** Says a check in words: the consequence, then the number, then what to do. */
public final class CheckWords {
  private final Words words;

  public CheckWords(Words words) {
    this.words = words;
  }

  /** What the line looks at: "product temperature". */
  public String subject(CheckLine line) {
    return words.say("check." + key(line.subject()) + ".name");
  }

  /** The whole sentence. */
  public String sentence(CheckLine line) {
    Object[] figures = line.figures().stream().map(CheckWords::figure).toArray();
    return words.say("check." + key(line.subject()) + "." + key(line.verdict()), figures);
  }

  /** "pass", "watch" or "stop". */
  public String verdict(CheckLine line) {
    return words.say("state." + key(line.verdict()));
  }

  /** What the input is called: "resistance of the cake". */
  public String unknown(Unknown unknown) {
    return words.say("unknown." + key(unknown) + ".name");
  }

  /** The cheap measurement that would settle it. */
  public String measurement(Unknown unknown) {
    return words.say("unknown." + key(unknown) + ".measure");
  }

  static String figure(Figure figure) {
    return Quantities.words(figure.si(), figure.kind());
  }

  static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
