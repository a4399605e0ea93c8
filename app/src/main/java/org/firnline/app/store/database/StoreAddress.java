package org.firnline.app.store.database;

import java.nio.file.Path;

/**
 * Where a laboratory's database is.
 *
 * @param url what JDBC opens
 * @param dialect which database answers there
 */
public record StoreAddress(String url, Dialect dialect) {
  private static final String POSTGRESQL = "jdbc:postgresql:";

  /** The file that belongs to a data folder. */
  public static StoreAddress file(Path database) {
    return new StoreAddress("jdbc:sqlite:" + database, Dialect.SQLITE);
  }

  /**
   * The database a setting names, or the file of the data folder where the setting is blank.
   *
   * @param setting {@code jdbc:postgresql://host/database?user=…}, or blank
   * @param database the file of the data folder
   * @throws IllegalArgumentException if the setting names any other kind of database
   */
  public static StoreAddress of(String setting, Path database) {
    if (setting.isBlank()) {
      return file(database);
    }
    if (!setting.startsWith(POSTGRESQL)) {
      throw new IllegalArgumentException(
          "the store '"
              + withoutSecrets(setting)
              + "' is not known; leave the setting out for SQLite in the data folder, or write"
              + " jdbc:postgresql://host/database?user=name");
    }
    return new StoreAddress(setting, Dialect.POSTGRESQL);
  }

  /** The address as it may be shown: without what follows the question mark. */
  public String shown() {
    return withoutSecrets(url);
  }

  private static String withoutSecrets(String url) {
    return url.replaceFirst("\\?.*", "").replaceFirst("//[^/@]*@", "//");
  }

  @Override
  public String toString() {
    return shown();
  }
}
