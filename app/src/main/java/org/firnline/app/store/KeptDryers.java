package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.firnline.app.store.audit.AuditedTable;
import org.firnline.app.store.audit.Changes;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The dryers of this laboratory, in the order people list them. */
@Repository
public class KeptDryers {
  private static final AuditedTable DRYER = AuditedTable.of("dryer");

  private final JdbcClient database;
  private final Changes changes;

  KeptDryers(JdbcClient database, Changes changes) {
    this.database = database;
    this.changes = changes;
  }

  /** All dryers. */
  public List<KeptDryer> list() {
    return database
        .sql(
            """
            select id, name, kind, description, plan_section
            from dryer
            order by position, name
            """)
        .query(KeptDryers::dryer)
        .list();
  }

  /** The dryer with this number. */
  public Optional<KeptDryer> find(long id) {
    return list().stream().filter(dryer -> dryer.id() == id).findFirst();
  }

  /** The dryer of this name. */
  public Optional<KeptDryer> find(String name) {
    return list().stream().filter(dryer -> dryer.name().equals(name)).findFirst();
  }

  /** Adds a dryer at the end of the list; its number is given by the store. */
  public void add(String name, String kind, String description, String planSection) {
    changes.add(
        DRYER,
        () ->
            database
                .sql(
                    """
                    insert into dryer (name, kind, description, plan_section, position)
                    values (:name, :kind, :description, :plan_section,
                            (select coalesce(max(position), 0) + 1 from dryer))
                    returning id
                    """)
                .param("name", name)
                .param("kind", kind)
                .param("description", description)
                .param("plan_section", planSection)
                .query(Long.class)
                .single());
  }

  private static KeptDryer dryer(ResultSet row, int number) throws SQLException {
    return new KeptDryer(
        row.getLong("id"),
        row.getString("name"),
        row.getString("kind"),
        row.getString("description"),
        row.getString("plan_section"));
  }
}
