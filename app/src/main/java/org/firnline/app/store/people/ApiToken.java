package org.firnline.app.store.people;

import java.time.Instant;
import java.util.Set;

/**
 * A key for a device or a script, without its secret.
 *
 * @param id its number
 * @param name what it is for
 * @param scopes what it may be used for
 * @param created when it was made
 * @param expires when it ends
 * @param revoked whether it was taken back
 */
public record ApiToken(
    long id, String name, Set<Scope> scopes, Instant created, Instant expires, boolean revoked) {

  public ApiToken {
    scopes = Set.copyOf(scopes);
  }
}
