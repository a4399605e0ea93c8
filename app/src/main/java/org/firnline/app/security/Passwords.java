package org.firnline.app.security;

import java.time.Clock;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.people.AccountRefused;
import org.firnline.app.store.people.Invitations;
import org.firnline.app.store.people.People;
import org.firnline.app.store.people.Person;
import org.firnline.app.store.people.Role;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;

/** Passwords and one-time codes: chosen here, checked here. */
@Service
public class Passwords {
  private static final int BCRYPT_STRENGTH = 10;

  private final People people;
  private final Invitations invitations;
  private final Changes changes;
  private final Clock clock;
  private final PasswordEncoder encoder = new BCryptPasswordEncoder(BCRYPT_STRENGTH);
  private final String nobody = hash("nobody has this password");

  Passwords(People people, Invitations invitations, Changes changes, Clock clock) {
    this.people = people;
    this.invitations = invitations;
    this.changes = changes;
    this.clock = clock;
  }

  /**
   * The person whose login, password and one-time code these are. A wrong attempt is counted and
   * reported; an unknown login takes as long as a wrong password.
   */
  public Optional<Person> signIn(String login, String password, String code) {
    Optional<Person> known = people.find(login).filter(Person::active);
    boolean right = matches(known.map(Person::password).orElse(""), password);
    boolean may = known.isPresent() && right && !people.isLocked(known.get());
    if (may && isCodeRight(known.get(), code)) {
      people.signedIn(known.get());
      return known;
    }
    people.failed(login, known);
    return Optional.empty();
  }

  /** Whether this is the person's password; a wrong one is counted and reported. */
  public boolean isPassword(Person person, String password) {
    boolean right = matches(person.password(), password) && !people.isLocked(person);
    if (!right) {
      people.failed(person.login(), Optional.of(person));
    }
    return right;
  }

  /**
   * Keeps a new password.
   *
   * @throws AccountRefused if the rules do not take it
   */
  public void choosePassword(Person person, String password) {
    PasswordRules.refusal(password, person.login())
        .ifPresent(
            reason -> {
              throw new AccountRefused(reason);
            });
    people.choosePassword(person.id(), hash(password));
  }

  /**
   * Uses an invitation up: the person chooses a password; the first one an account, too.
   *
   * @param login of the first administrator; not read for others
   * @param name of the first administrator; not read for others
   */
  public void accept(
      Invitations.Invitation invitation, String login, String name, String password) {
    changes.together(
        () -> {
          OptionalLong invited = invitation.personId();
          boolean first = invited.isEmpty();
          long id =
              first ? people.add(login, name, EnumSet.allOf(Role.class)) : invited.getAsLong();
          Person person = people.find(id).orElseThrow();
          choosePassword(person, password);
          invitations.use(invitation);
          if (first) {
            invitations.opened(person.login());
          }
          return person;
        });
  }

  /** Asks for one-time codes from now on; false if the code does not belong to the secret. */
  public boolean startCodes(Person person, String secret, String code) {
    OptionalLong step = OneTimeCodes.step(secret, code, clock.instant());
    if (step.isEmpty()) {
      return false;
    }
    people.chooseSecondFactor(person.id(), secret);
    return true;
  }

  private boolean isCodeRight(Person person, String code) {
    if (!person.hasSecondFactor()) {
      return true;
    }
    OptionalLong step = OneTimeCodes.step(person.secondFactor(), code, clock.instant());
    return step.isPresent() && people.useCode(person, step.getAsLong());
  }

  private String hash(String password) {
    return Objects.requireNonNull(encoder.encode(password), "no hash");
  }

  private boolean matches(String hash, String password) {
    boolean right = encoder.matches(password, hash.isEmpty() ? nobody : hash);
    return right && !hash.isEmpty();
  }
}
