package org.firnline.app.store;

import java.util.Optional;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is set for the whole laboratory, by name. */
@Repository
public class KeptSettings {
  private static final AuditedTable SETTING = AuditedTable.keyedBy("setting", "name");

  private final JdbcClient database;
  private final Changes changes;

  KeptSettings(JdbcClient database, Changes changes) {
    this.database = database;
    this.changes = changes;
  }

  /** The value, once it was set. */
  public Optional<String> find(String name) {
    return database
        .sql("select value from setting where name = :name")
        .param("name", name)
        .query(String.class)
        .optional();
  }

  /** Sets a value. */
  public void put(String name, String value) {
    changes.change(
        Action.CONFIGURE,
        SETTING,
        name,
        () ->
            database
                .sql(
                    """
                    insert into setting (name, value) values (:name, :value)
                    on conflict (name) do update set value = excluded.value
                    """)
                .param("name", name)
                .param("value", value)
                .update());
  }
}
