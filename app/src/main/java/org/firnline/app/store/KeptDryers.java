package org.firnline.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The dryers of this laboratory, in the order people list them. */
@Repository
public class KeptDryers {
  private final JdbcClient database;

  KeptDryers(JdbcClient database) {
    this.database = database;
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
    database
        .sql(
            """
            insert into dryer (name, kind, description, plan_section, position)
            values (:name, :kind, :description, :plan_section,
                    (select coalesce(max(position), 0) + 1 from dryer))
            """)
        .param("name", name)
        .param("kind", kind)
        .param("description", description)
        .param("plan_section", planSection)
        .update();
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
