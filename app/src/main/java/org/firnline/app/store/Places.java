package org.firnline.app.store;

import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads and writes the name of the laboratory. */
@Repository
public class Places {
  private static final String NAME = "place.name";
  private static final String INVENTED = "place.invented";

  private final JdbcClient database;

  Places(JdbcClient database) {
    this.database = database;
  }

  /** The place, once it has a name. */
  public Optional<Place> find() {
    return setting(NAME)
        .map(name -> new Place(name, setting(INVENTED).map(Boolean::parseBoolean).orElse(false)));
  }

  /** Gives the place its name. */
  public void name(Place place) {
    put(NAME, place.name());
    put(INVENTED, Boolean.toString(place.invented()));
  }

  private Optional<String> setting(String name) {
    return database
        .sql("select value from setting where name = :name")
        .param("name", name)
        .query(String.class)
        .optional();
  }

  private void put(String name, String value) {
    database
        .sql(
            """
            insert into setting (name, value) values (:name, :value)
            on conflict (name) do update set value = excluded.value
            """)
        .param("name", name)
        .param("value", value)
        .update();
  }
}
