package org.firnline.app.store.audit;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes entries, one behind the other. Every call belongs inside a transaction. */
final class Chain {
  /** Clocks that are kept by a time server are moved by less; more is worth an entry. */
  private static final Duration QUIETLY_MOVED = Duration.ofSeconds(2);

  private final JdbcClient database;
  private final Clock clock;

  Chain(JdbcClient database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /**
   * What is said of a change.
   *
   * @param action what was done
   * @param subject table, or subject of an event
   * @param key the record there
   * @param old values that went
   * @param fresh values that came
   */
  record Said(Action action, String subject, String key, RowImage old, RowImage fresh) {}

  private record Head(long entries, String hash, String at) {}

  /** Makes other writers wait until this transaction ends. */
  void hold() {
    database.sql("update audit_head set entries = entries where id = 1").update();
  }

  void append(Occasion occasion, Said said) {
    Head head =
        database
            .sql("select entries, hash, at_utc from audit_head where id = 1")
            .query(
                (row, number) ->
                    new Head(
                        row.getLong("entries"), row.getString("hash"), row.getString("at_utc")))
            .single();
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    if (!head.at().isEmpty() && now.isBefore(Instant.parse(head.at()).minus(QUIETLY_MOVED))) {
      head = write(head, now, Occasion.program("the clock was set back"), turnedBack(head, now));
    }
    write(head, now, occasion, said);
  }

  private static Said turnedBack(Head head, Instant now) {
    return new Said(
        Action.CLOCK,
        "clock",
        "utc",
        new RowImage(Map.of("utc", head.at())),
        new RowImage(Map.of("utc", now.toString())));
  }

  private Head write(Head head, Instant at, Occasion occasion, Said said) {
    AuditEntry entry =
        new AuditEntry(
                head.entries() + 1,
                at,
                clock.getZone().getId(),
                occasion,
                said.action().key(),
                said.subject(),
                said.key(),
                said.old().json(),
                said.fresh().json(),
                head.hash(),
                "")
            .sealed();
    insert(entry);
    database
        .sql("update audit_head set entries = :entries, hash = :hash, at_utc = :at where id = 1")
        .param("entries", entry.number())
        .param("hash", entry.hash())
        .param("at", at.toString())
        .update();
    return new Head(entry.number(), entry.hash(), at.toString());
  }

  private void insert(AuditEntry entry) {
    database
        .sql(
            """
            insert into audit (id, at_utc, zone, person, via, action, subject, subject_key,
                               old_values, new_values, why, previous, hash)
            values (:id, :at, :zone, :person, :via, :action, :subject, :key,
                    :old, :new, :why, :previous, :hash)
            """)
        .param("id", entry.number())
        .param("at", entry.at().toString())
        .param("zone", entry.zone())
        .param("person", entry.occasion().person())
        .param("via", entry.occasion().via())
        .param("action", entry.action())
        .param("subject", entry.subject())
        .param("key", entry.subjectKey())
        .param("old", entry.oldValues())
        .param("new", entry.newValues())
        .param("why", entry.occasion().why())
        .param("previous", entry.previous())
        .param("hash", entry.hash())
        .update();
  }
}
