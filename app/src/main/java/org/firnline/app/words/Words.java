package org.firnline.app.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The text bundle of one language. Pages and commands say the same things with it. */
public final class Words {
  private static final String BUNDLE = "messages";

  private final Locale locale;
  private final ResourceBundle bundle;

  private Words(Locale locale) {
    this.locale = locale;
    this.bundle =
        ResourceBundle.getBundle(
            BUNDLE,
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** The words of a language; English where a language is missing. */
  public static Words in(Locale locale) {
    return new Words(locale);
  }

  /**
   * A text with its places filled.
   *
   * @throws java.util.MissingResourceException if the bundle lacks the key
   */
  public String say(String key, Object... with) {
    String pattern = bundle.getString(key);
    return with.length == 0 ? pattern : new MessageFormat(pattern, locale).format(with);
  }

  /** The language. */
  Locale locale() {
    return locale;
  }

  /** Whether the bundle has a text under this key. */
  public boolean has(String key) {
    return bundle.containsKey(key);
  }
}
