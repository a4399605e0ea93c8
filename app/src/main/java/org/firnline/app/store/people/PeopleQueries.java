package org.firnline.app.store.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.firnline.app.store.audit.Unaudited;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows about people. */
@Repository
class PeopleQueries {
  private static final AuditedTable PERSON =
      AuditedTable.of("person")
          .derived("failed", "locked_until_utc", "last_code")
          .secret("password", "second_factor");
  private static final String ALL =
      "select id, login, name, roles, active, password, second_factor, locked_until_utc"
          + " from person ";

  private final JdbcClient database;
  private final Changes changes;

  PeopleQueries(JdbcClient database, Changes changes) {
    this.database = database;
    this.changes = changes;
  }

  List<Person> list() {
    return database.sql(ALL + "order by login").query(PeopleQueries::person).list();
  }

  Optional<Person> find(long id) {
    return database
        .sql(ALL + "where id = :id")
        .param("id", id)
        .query(PeopleQueries::person)
        .optional();
  }

  Optional<Person> find(String login) {
    return database
        .sql(ALL + "where login = :login")
        .param("login", login)
        .query(PeopleQueries::person)
        .optional();
  }

  long add(String login, String name, String roles) {
    return changes.add(
        PERSON,
        () ->
            database
                .sql(
                    """
                    insert into person (login, name, roles, active, password, second_factor)
                    values (:login, :name, :roles, 1, '', '')
                    returning id
                    """)
                .param("login", login)
                .param("name", name)
                .param("roles", roles)
                .query(Long.class)
                .single());
  }

  void grant(long id, String roles, boolean active) {
    changes.change(
        Action.ROLES,
        PERSON,
        id,
        () ->
            database
                .sql("update person set roles = :roles, active = :active where id = :id")
                .param("roles", roles)
                .param("active", active ? 1 : 0)
                .param("id", id)
                .update());
  }

  void choosePassword(long id, String hash) {
    changes.change(
        Action.CONFIGURE,
        PERSON,
        id,
        () ->
            database
                .sql(
                    """
                    update person set password = :hash, failed = 0, locked_until_utc = ''
                    where id = :id
                    """)
                .param("hash", hash)
                .param("id", id)
                .update());
  }

  void chooseSecondFactor(long id, String secret) {
    changes.change(
        Action.CONFIGURE,
        PERSON,
        id,
        () ->
            database
                .sql("update person set second_factor = :secret, last_code = 0 where id = :id")
                .param("secret", secret)
                .param("id", id)
                .update());
  }

  /** Counts a wrong attempt; gives how many there were since the last right one. */
  @Unaudited("a counter; the attempt itself has its entry")
  long countFailure(long id) {
    return database
        .sql("update person set failed = failed + 1 where id = :id returning failed")
        .param("id", id)
        .query(Long.class)
        .single();
  }

  @Unaudited("a counter; the attempt itself has its entry")
  void lock(long id, Instant until) {
    database
        .sql("update person set failed = 0, locked_until_utc = :until where id = :id")
        .param("until", until.toString())
        .param("id", id)
        .update();
  }

  @Unaudited("a counter; the sign-in itself has its entry")
  void clearFailures(long id) {
    database
        .sql("update person set failed = 0, locked_until_utc = '' where id = :id")
        .param("id", id)
        .update();
  }

  /** Marks a one-time code as used; false where it or a later one was used before. */
  @Unaudited("a counter; the sign-in itself has its entry")
  boolean useCode(long id, long step) {
    return database
            .sql("update person set last_code = :step where id = :id and last_code < :step")
            .param("step", step)
            .param("id", id)
            .update()
        == 1;
  }

  private static Person person(ResultSet row, int number) throws SQLException {
    String locked = row.getString("locked_until_utc");
    return new Person(
        row.getLong("id"),
        row.getString("login"),
        row.getString("name"),
        Role.ofText(row.getString("roles")),
        row.getLong("active") == 1,
        row.getString("password"),
        row.getString("second_factor"),
        locked.isEmpty() ? Optional.empty() : Optional.of(Instant.parse(locked)));
  }
}
