package org.firnline.app.store.people;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * A person with an account.
 *
 * @param id number, never given to another
 * @param login what is typed to sign in; lower case, never given to another
 * @param name as printed beside a signature
 * @param roles what this person may do
 * @param active false once the account was closed
 * @param password hash; blank until the person chose one
 * @param secondFactor Base32 secret of the one-time codes; blank where there are none
 * @param lockedUntil end of the lock after too many wrong passwords
 */
public record Person(
    long id,
    String login,
    String name,
    Set<Role> roles,
    boolean active,
    String password,
    String secondFactor,
    Optional<Instant> lockedUntil) {

  public Person {
    roles = Set.copyOf(roles);
  }

  /** Whether a one-time code is asked beside the password. */
  public boolean hasSecondFactor() {
    return !secondFactor.isEmpty();
  }

  /** Without the secrets. */
  @Override
  public String toString() {
    return "person " + login;
  }
}
