package org.firnline.app.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class StoreAddressTest {
  private static final Path FILE = Path.of("lab", "firnline.db");

  @Test
  void isTheFileOfTheFolderWhereNothingIsSaid() {
    assertThat(StoreAddress.of(" ", FILE)).isEqualTo(StoreAddress.file(FILE));
    assertThat(StoreAddress.file(FILE).dialect()).isEqualTo(Dialect.SQLITE);
  }

  @Test
  void isAServerWhereOneIsNamed() {
    StoreAddress server = StoreAddress.of("jdbc:postgresql://db/lab?user=fen&password=hush", FILE);
    assertThat(server.dialect()).isEqualTo(Dialect.POSTGRESQL);
    assertThat(server).hasToString("jdbc:postgresql://db/lab");
  }

  @Test
  void refusesOtherDatabasesWithoutRepeatingTheirSecrets() {
    assertThatThrownBy(() -> StoreAddress.of("jdbc:other://fen:hush@db/lab?password=hush", FILE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("jdbc:other://db/lab")
        .hasMessageContaining("jdbc:postgresql://")
        .hasMessageNotContaining("hush");
  }
}
