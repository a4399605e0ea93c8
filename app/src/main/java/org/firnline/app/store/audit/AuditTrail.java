package org.firnline.app.store.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the audit. */
@Repository
public class AuditTrail {
  private static final String COLUMNS =
      "select id, at_utc, zone, person, via, action, subject, subject_key, old_values, new_values,"
          + " why, previous, hash from audit";
  private static final String WANTED =
      """
       where (:person = '' or person = :person)
         and (:action = '' or action = :action)
         and (:subject = '' or subject = :subject)
         and (:key = '' or subject_key = :key)
         and (:from = '' or at_utc >= :from)
         and (:to = '' or at_utc < :to)
         and (:text = '' or lower(old_values || ' ' || new_values || ' ' || why) like :text)
         and id < :below
      """;

  private final JdbcClient database;

  /** Reads from this database. */
  public AuditTrail(JdbcClient database) {
    this.database = database;
  }

  /** The newest entries that a question asks for, newest first. */
  public List<AuditEntry> find(AuditQuestion question, int most) {
    return asked(COLUMNS + WANTED + " order by id desc limit :most", question)
        .param("most", most)
        .query(AuditTrail::entry)
        .list();
  }

  /** All entries that a question asks for, oldest first; close the stream. */
  public Stream<AuditEntry> stream(AuditQuestion question) {
    return asked(COLUMNS + WANTED + " order by id", question).query(AuditTrail::entry).stream();
  }

  /** How many entries there are and the hash of the last, as the head has it. */
  public Head head() {
    return database
        .sql("select entries, hash from audit_head where id = 1")
        .query((row, number) -> new Head(row.getLong("entries"), row.getString("hash")))
        .single();
  }

  /** Names of all who appear in the audit. */
  public List<String> persons() {
    return distinct("person");
  }

  /** Subjects that appear in the audit. */
  public List<String> subjects() {
    return distinct("subject");
  }

  /**
   * The end of the chain.
   *
   * @param entries how many
   * @param hash of the last
   */
  public record Head(long entries, String hash) {}

  private List<String> distinct(String column) {
    return database
        .sql("select distinct " + column + " from audit order by " + column)
        .query(String.class)
        .list();
  }

  private JdbcClient.StatementSpec asked(String sql, AuditQuestion question) {
    return database
        .sql(sql)
        .param("person", question.person())
        .param("action", question.action())
        .param("subject", question.subject())
        .param("key", question.key())
        .param("from", question.from())
        .param("to", question.to())
        .param("text", question.pattern())
        .param("below", question.below());
  }

  private static AuditEntry entry(ResultSet row, int number) throws SQLException {
    return new AuditEntry(
        row.getLong("id"),
        Instant.parse(row.getString("at_utc")),
        row.getString("zone"),
        new Occasion(row.getString("person"), row.getString("via"), row.getString("why")),
        row.getString("action"),
        row.getString("subject"),
        row.getString("subject_key"),
        row.getString("old_values"),
        row.getString("new_values"),
        row.getString("previous"),
        row.getString("hash"));
  }
}
