package org.firnline.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.firnline.app.store.database.Dialect;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

@ParameterizedClass
@EnumSource
class RawFilesTest {
  @Parameter Dialect dialect;

  @TempDir Path root;

  private OpenStore store;
  private DataFolder folder;
  private JdbcClient database;
  private RawFiles files;

  @BeforeEach
  void open() {
    store = Stores.open(dialect, root);
    folder = store.folder();
    database = store.database();
    files = store.files();
  }

  @AfterEach
  void close() {
    store.close();
  }

  private RawFile keep(String text, String name) throws IOException {
    return files.keep(bytes(text), name);
  }

  private static InputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  private long filesOnDisk() throws IOException {
    try (Stream<Path> all = Files.walk(folder.rawFiles())) {
      return all.filter(Files::isRegularFile).count();
    }
  }

  @Nested
  class AFileThatIsKept {
    @Test
    void isNamedByItsHash() throws IOException {
      RawFile kept = keep("abc", "log.csv");
      // FIPS 180-2, appendix B.1: SHA-256 of "abc"
      assertThat(kept.sha256())
          .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
      assertThat(kept.size_bytes()).isEqualTo(3);
      assertThat(kept.originalName()).isEqualTo("log.csv");
      assertThat(kept.arrived()).isEqualTo(Stores.NOW);
    }

    @Test
    void comesBackByteForByte() throws IOException {
      RawFile kept = keep("a\r\nb\0\u00e9", "../../log.csv");
      try (InputStream content = files.open(kept)) {
        assertThat(new String(content.readAllBytes(), StandardCharsets.UTF_8))
            .isEqualTo("a\r\nb\0\u00e9");
      }
      assertThat(Files.walk(root).filter(Files::isRegularFile))
          .allMatch(file -> file.startsWith(folder.root()));
    }

    @Test
    void isKeptOnceHoweverOftenItArrives() throws IOException {
      RawFile first = keep("abc", "log.csv");
      RawFile again = keep("abc", "copy of log.csv");
      assertThat(again).isEqualTo(first);
      assertThat(filesOnDisk()).isEqualTo(1);
    }

    @Test
    void remembersWhatWasAnsweredAboutIt() throws IOException {
      RawFile kept = keep("abc", "log.csv");
      Map<String, String> answers = Map.of("column:T & p = [°C]", "mTorr", "zone", "UTC");
      files.choose(kept, answers);
      assertThat(files.find(kept.id()).orElseThrow().choices()).isEqualTo(answers);
    }
  }

  @Nested
  class AFileThatBreaksOffWhileArriving {
    @Test
    void leavesNothingBehind() throws IOException {
      InputStream broken =
          new InputStream() {
            private int sent;

            @Override
            public int read() throws IOException {
              if (sent++ > 1_000) {
                throw new IOException("connection lost");
              }
              return 'x';
            }
          };
      assertThatThrownBy(() -> files.keep(broken, "log.csv")).isInstanceOf(IOException.class);
      assertThat(filesOnDisk()).isZero();
      assertThat(files.listWithoutRun()).isEmpty();
    }
  }

  @Nested
  class TheStore {
    @Test
    void refusesARunOnADryerThatIsNotThere() {
      assertThatThrownBy(() -> store.runs().add("run", 99, 1, Optional.empty()))
          .isInstanceOf(DataAccessException.class);
      assertThat(store.audit().head().entries()).isZero();
    }

    @Test
    void writesAheadSoThatReadersNeverWait() {
      assumeThat(dialect).isEqualTo(Dialect.SQLITE);
      assertThat(database.sql("pragma journal_mode").query(String.class).single()).isEqualTo("wal");
    }
  }
}
