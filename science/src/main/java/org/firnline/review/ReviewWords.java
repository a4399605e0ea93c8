package org.firnline.review;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The sentences of a review, kept in the bundle {@code findings} so that a language is one file.
 */
final class ReviewWords {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("org.firnline.review.findings", Locale.ROOT);

  private ReviewWords() {}

  /**
   * A sentence.
   *
   * @param key its name in the bundle
   * @param values what it says about this run; numbers already spoken with their units
   */
  static String say(String key, Object... values) {
    return new MessageFormat(BUNDLE.getString(key), Locale.ENGLISH).format(values);
  }
}
