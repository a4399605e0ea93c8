package org.firnline.app.security;

import jakarta.servlet.http.HttpSession;
import org.firnline.app.store.people.Person;
import org.springframework.stereotype.Service;

/**
 * Is it the person who signs? At the first signature of a session both login and password are
 * typed, later the password alone; a session that ended for idleness starts again with both.
 * Source: 21 CFR 11.200(a)(1).
 */
@Service
public class SigningCheck {
  private static final String SIGNED_BEFORE = SigningCheck.class.getName();

  private final Passwords passwords;

  SigningCheck(Passwords passwords) {
    this.passwords = passwords;
  }

  /** Whether the login must be typed beside the password. */
  public boolean asksLogin(HttpSession session, Person person) {
    return !person.login().equals(session.getAttribute(SIGNED_BEFORE));
  }

  /**
   * Checks what was typed; a wrong attempt is counted and reported.
   *
   * @param login as typed; not read where it is not asked
   */
  public boolean confirm(HttpSession session, Person person, String login, String password) {
    boolean named = !asksLogin(session, person) || person.login().equals(login.strip());
    boolean right = passwords.isPassword(person, named ? password : "");
    if (right) {
      session.setAttribute(SIGNED_BEFORE, person.login());
    }
    return right;
  }
}
