package org.firnline.app.store.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Links that let a person choose a password, once. */
@Repository
public class Invitations {
  private static final AuditedTable INVITATION = AuditedTable.of("invitation").secret("hash");
  private static final Duration VALID = Duration.ofDays(2);

  private final JdbcClient database;
  private final Changes changes;
  private final Clock clock;

  Invitations(JdbcClient database, Changes changes, Clock clock) {
    this.database = database;
    this.changes = changes;
    this.clock = clock;
  }

  /**
   * A link that still works.
   *
   * @param id its number
   * @param personId whose password is chosen; empty for the first administrator
   */
  public record Invitation(long id, OptionalLong personId) {}

  /**
   * Makes a link; earlier ones for the same person stop working.
   *
   * @param personId empty for the first administrator
   * @return the secret part of the link, which is kept nowhere
   */
  public String make(OptionalLong personId) {
    String secret = Secrets.fresh();
    changes.together(
        () -> {
          endEarlier(personId);
          return changes.add(
              INVITATION,
              () ->
                  database
                      .sql(
                          """
                          insert into invitation (person_id, hash, expires_utc, used_utc)
                          values (:person_id, :hash, :expires_utc, '')
                          returning id
                          """)
                      .param("person_id", personId.isPresent() ? personId.getAsLong() : null)
                      .param("hash", Secrets.hash(secret))
                      .param("expires_utc", clock.instant().plus(VALID).toString())
                      .query(Long.class)
                      .single());
        });
    return secret;
  }

  /** The invitation a secret belongs to, if it still works. */
  public Optional<Invitation> find(String secret) {
    return database
        .sql(
            """
            select id, person_id from invitation
            where hash = :hash and used_utc = '' and expires_utc > :now
            """)
        .param("hash", Secrets.hash(secret))
        .param("now", clock.instant().toString())
        .query(
            (row, number) -> {
              long person = row.getLong("person_id");
              OptionalLong invited = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(person);
              return new Invitation(row.getLong("id"), invited);
            })
        .optional();
  }

  /** Uses a link up. */
  public void use(Invitation invitation) {
    end(invitation.id());
  }

  private void endEarlier(OptionalLong personId) {
    database
        .sql(
            """
            select id from invitation
            where coalesce(person_id, 0) = :person_id and used_utc = ''
            """)
        .param("person_id", personId.orElse(0))
        .query(Long.class)
        .list()
        .forEach(this::end);
  }

  private void end(long id) {
    Instant now = clock.instant();
    changes.change(
        Action.CONFIGURE,
        INVITATION,
        id,
        () ->
            database
                .sql("update invitation set used_utc = :now where id = :id and used_utc = ''")
                .param("now", now.toString())
                .param("id", id)
                .update());
  }

  /** Reports that the laboratory is shared now and who opened it. */
  public void opened(String login) {
    changes.note(Action.CONFIGURE, "laboratory", "first-administrator", Map.of("login", login));
  }
}
