package org.firnline.app.store.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.Changes;
import org.springframework.stereotype.Service;

/** Accounts: one person, one account, never removed, never given to another. */
@Service
public class People {
  /** Wrong passwords in a row after which an account rests. */
  public static final int MOST_FAILURES = 5;

  /** How long it rests. */
  public static final Duration LOCK = Duration.ofMinutes(15);

  private static final Pattern LOGIN = Pattern.compile("[a-z][a-z0-9._-]{1,39}");
  private static final int LONGEST_NAME = 100;

  private final PeopleQueries queries;
  private final Changes changes;
  private final Clock clock;

  People(PeopleQueries queries, Changes changes, Clock clock) {
    this.queries = queries;
    this.changes = changes;
    this.clock = clock;
  }

  /** Everyone, closed accounts included. */
  public List<Person> list() {
    return queries.list();
  }

  /** The person with this number. */
  public Optional<Person> find(long id) {
    return queries.find(id);
  }

  /** The person who signs in with this; case does not matter. */
  public Optional<Person> find(String login) {
    return queries.find(login.strip().toLowerCase(Locale.ROOT));
  }

  /**
   * Opens an account; it has no password until its person chooses one.
   *
   * @return its number
   * @throws AccountRefused if the login was ever used, or is none
   */
  public long add(String login, String name, Set<Role> roles) {
    String wanted = login.strip().toLowerCase(Locale.ROOT);
    if (!LOGIN.matcher(wanted).matches()) {
      throw new AccountRefused("login");
    }
    String printed = name.strip();
    if (printed.isEmpty() || printed.length() > LONGEST_NAME) {
      throw new AccountRefused("name");
    }
    return changes.together(
        () -> {
          if (queries.find(wanted).isPresent()) {
            throw new AccountRefused("taken");
          }
          return queries.add(wanted, printed, Role.text(roles));
        });
  }

  /**
   * Gives an account its roles, closes it or opens it again.
   *
   * @throws AccountRefused if nobody would be left to look after accounts
   */
  public void grant(long id, Set<Role> roles, boolean active) {
    changes.together(
        () -> {
          queries.grant(id, Role.text(roles), active);
          boolean kept =
              queries.list().stream()
                  .anyMatch(p -> p.active() && p.roles().contains(Role.ADMINISTRATOR));
          if (!kept) {
            throw new AccountRefused("last");
          }
          return id;
        });
  }

  /** Keeps the hash of a new password and lifts a lock. */
  public void choosePassword(long id, String hash) {
    queries.choosePassword(id, hash);
  }

  /** Keeps the secret of one-time codes; blank to do without. */
  public void chooseSecondFactor(long id, String secret) {
    queries.chooseSecondFactor(id, secret);
  }

  /** Marks a one-time code as used; false where it was used before. */
  public boolean useCode(Person person, long step) {
    return queries.useCode(person.id(), step);
  }

  /** Whether too many wrong passwords were typed of late. */
  public boolean isLocked(Person person) {
    return person.lockedUntil().filter(clock.instant()::isBefore).isPresent();
  }

  /** Counts and reports a failed attempt to sign in; the account rests after too many. */
  public void failed(String login, Optional<Person> person) {
    changes.together(
        () -> {
          changes.note(Action.SIGN_IN_FAILED, "sign-in", shortened(login), Map.of());
          person.ifPresent(
              known -> {
                if (queries.countFailure(known.id()) >= MOST_FAILURES) {
                  Instant until = clock.instant().plus(LOCK);
                  queries.lock(known.id(), until);
                  changes.note(
                      Action.SIGN_IN_FAILED,
                      "sign-in",
                      known.login(),
                      Map.of("lockedUntil", until.toString()));
                }
              });
          return login;
        });
  }

  /** Reports a sign-in. */
  public void signedIn(Person person) {
    changes.together(
        () -> {
          queries.clearFailures(person.id());
          changes.note(Action.SIGN_IN, "sign-in", person.login(), Map.of());
          return person;
        });
  }

  private static String shortened(String login) {
    String shown = login.strip().replaceAll("\\p{Cntrl}", " ");
    return shown.isEmpty() ? "-" : shown.substring(0, Math.min(40, shown.length()));
  }
}
