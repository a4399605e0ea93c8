package org.firnline.app.security;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which passwords are taken: long ones that nobody guesses first. No rule asks for particular kinds
 * of characters. Source of the approach: OWASP ASVS 4.0.3, V2.1 (from memory).
 */
public final class PasswordRules {
  /** Fewest characters. */
  public static final int SHORTEST = 12;

  /** Most bytes in UTF-8; bcrypt reads no more. */
  public static final int LONGEST_BYTES = 72;

  private static final int FEWEST_DIFFERENT = 5;
  private static final List<String> GUESSED_FIRST =
      List.of(
          "password",
          "passwort",
          "qwertyuiop",
          "qwertzuiop",
          "azertyuiop",
          "123456789",
          "987654321",
          "iloveyou",
          "letmein",
          "changeme",
          "administrator",
          "abcdefgh",
          "freezedry",
          "firnline",
          "welcome",
          "trustno1");

  private PasswordRules() {}

  /**
   * Why a password is not taken, as the last part of a message key; empty if it is.
   *
   * @param login of the person who chose it; must not be part of it
   */
  public static Optional<String> refusal(String password, String login) {
    String plain = password.toLowerCase(Locale.ROOT);
    if (password.codePointCount(0, password.length()) < SHORTEST) {
      return Optional.of("short");
    }
    if (password.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
      return Optional.of("long");
    }
    if (plain.codePoints().distinct().count() < FEWEST_DIFFERENT
        || plain.contains(login.toLowerCase(Locale.ROOT))
        || GUESSED_FIRST.stream().anyMatch(plain::contains)) {
      return Optional.of("guessed");
    }
    return Optional.empty();
  }
}
