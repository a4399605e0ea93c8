package org.firnline.app.store.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keys for devices and scripts: shown once, kept as a hash. */
@Repository
public class ApiTokens {
  private static final String MARK = "firn_";
  private static final AuditedTable TOKEN = AuditedTable.of("api_token").secret("hash");
  private static final String ALL =
      "select id, name, scopes, created_utc, expires_utc, revoked_utc from api_token ";

  private final JdbcClient database;
  private final Changes changes;
  private final Clock clock;

  ApiTokens(JdbcClient database, Changes changes, Clock clock) {
    this.database = database;
    this.changes = changes;
    this.clock = clock;
  }

  /** All keys, the latest first. */
  public List<ApiToken> list() {
    return database.sql(ALL + "order by id desc").query(ApiTokens::token).list();
  }

  /**
   * Makes a key.
   *
   * @return the key itself, which is kept nowhere
   */
  public String make(String name, Set<Scope> scopes, Duration valid) {
    if (name.isBlank() || scopes.isEmpty()) {
      throw new AccountRefused("token");
    }
    String secret = MARK + Secrets.fresh();
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    changes.add(
        TOKEN,
        () ->
            database
                .sql(
                    """
                    insert into api_token (name, scopes, hash, created_utc, expires_utc, revoked_utc)
                    values (:name, :scopes, :hash, :created_utc, :expires_utc, '')
                    returning id
                    """)
                .param("name", name.strip())
                .param("scopes", Scope.text(scopes))
                .param("hash", Secrets.hash(secret))
                .param("created_utc", now.toString())
                .param("expires_utc", now.plus(valid).toString())
                .query(Long.class)
                .single());
    return secret;
  }

  /** Takes a key back. */
  public void revoke(long id) {
    String now = clock.instant().toString();
    changes.change(
        Action.VOID,
        TOKEN,
        id,
        () ->
            database
                .sql("update api_token set revoked_utc = :now where id = :id and revoked_utc = ''")
                .param("now", now)
                .param("id", id)
                .update());
  }

  /** The key somebody sent, if it still opens anything. */
  public Optional<ApiToken> find(String secret) {
    return database
        .sql(ALL + "where hash = :hash and revoked_utc = '' and expires_utc > :now")
        .param("hash", Secrets.hash(secret))
        .param("now", clock.instant().toString())
        .query(ApiTokens::token)
        .optional();
  }

  private static ApiToken token(ResultSet row, int number) throws SQLException {
    return new ApiToken(
        row.getLong("id"),
        row.getString("name"),
        Scope.ofText(row.getString("scopes")),
        Instant.parse(row.getString("created_utc")),
        Instant.parse(row.getString("expires_utc")),
        !row.getString("revoked_utc").isEmpty());
  }
}
