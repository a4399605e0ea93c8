package org.firnline.app.store.audit;

/**
 * Who does something, and why.
 *
 * @param person the login of the person, or what acts without one, e.g. {@code this machine}
 * @param via how it came: {@code page}, {@code api}, {@code command} or {@code program}
 * @param why the reason that was given; blank where none was
 */
public record Occasion(String person, String via, String why) {
  private static final int LONGEST_REASON = 2_000;

  public Occasion {
    if (person.isBlank() || via.isBlank()) {
      throw new IllegalArgumentException("an occasion names who acts and how it came");
    }
    String given = why.strip();
    why = given.substring(0, Math.min(LONGEST_REASON, given.length()));
  }

  /** The program itself, of its own accord. */
  public static Occasion program(String why) {
    return new Occasion("Firnline", "program", why);
  }
}
