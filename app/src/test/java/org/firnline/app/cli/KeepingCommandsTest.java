package org.firnline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.Stores;
import org.firnline.app.store.database.Dialect;
import org.firnline.app.store.database.StoreAddress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that look after a laboratory, as typed. */
class KeepingCommandsTest {
  @TempDir Path root;

  private Path laboratory;

  private record Answer(int code, String text) {}

  private static Answer type(Object... words) {
    StringWriter out = new StringWriter();
    int code =
        FirnlineCommand.commandLine()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(out))
            .execute(Stream.of(words).map(Object::toString).toArray(String[]::new));
    return new Answer(code, out.toString());
  }

  @BeforeEach
  void fill() {
    laboratory = root.resolve("laboratory");
    try (OpenStore store = open()) {
      store.plans().add("Moss", "plan: Moss\n");
    }
  }

  private OpenStore open() {
    DataFolder folder = new DataFolder(laboratory);
    Clock clock = Clock.fixed(Stores.NOW, ZoneOffset.UTC);
    return new OpenStore(folder, StoreAddress.file(folder.database()), Stores.ROWAN, clock);
  }

  @Test
  void r_rec_06_verifyNamesTheFirstAlteredRecord() {
    assertThat(type("verify", "--data", laboratory).text()).contains("Unaltered");
    try (OpenStore store = open()) {
      store.database().sql("update plan set title = 'Mosz'").update();
    }
    Answer answer = type("verify", "--data", laboratory);
    assertThat(answer.code()).isEqualTo(FirnlineCommand.STOP_LINE);
    assertThat(answer.text()).contains("First: plan 1 was altered: title");
    assertThat(type("verify", "--json", "--data", laboratory).text())
        .contains("\"unaltered\" : false", "plan 1 was altered: title");
  }

  @Test
  void r_rec_05_backupAndRestoreBringTheLaboratoryBack() throws Exception {
    Answer backup = type("backup", root.resolve("copies"), "--data", laboratory);
    assertThat(backup.code()).as(backup.text()).isEqualTo(FirnlineCommand.FINE);
    Path file;
    try (Stream<Path> files = Files.list(root.resolve("copies"))) {
      file = files.findFirst().orElseThrow();
    }
    Path restored = root.resolve("restored");
    Answer answer = type("restore", file, "--data", restored);
    assertThat(answer.code()).as(answer.text()).isEqualTo(FirnlineCommand.FINE);
    assertThat(type("verify", "--data", restored).text()).contains("Unaltered", "Read: 2 entries");
    assertThat(type("restore", file, "--data", restored).text()).contains("is not empty");
    assertThat(type("restore", file + "x", "--data", restored).text()).contains("no such file");
    try (OpenStore store = open()) {
      store.database().sql("update plan set title = 'Mosz'").update();
    }
    Answer refused = type("backup", root.resolve("copies"), "--data", laboratory);
    assertThat(refused.code()).isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(refused.text()).contains("No backup was made", "plan 1 was altered");
  }

  @Test
  void migrateMovesToAnotherDatabase() throws Exception {
    StoreAddress there =
        Stores.empty(Dialect.POSTGRESQL, Files.createDirectory(root.resolve("there")));
    Answer moved = type("migrate", "--data", laboratory, "--to", there.url());
    assertThat(moved.code()).as(moved.text()).isEqualTo(FirnlineCommand.FINE);
    assertThat(type("verify", "--data", laboratory, "--store", there.url()).text())
        .contains("Unaltered");
    assertThat(type("migrate", "--data", laboratory, "--to", there.url()).text())
        .contains("not empty");
    assertThat(type("migrate", "--data", laboratory, "--to", "jdbc:other:x").code())
        .isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(type("verify", "--data", laboratory, "--store", "jdbc:other:x").text())
        .contains("is not known");
    assertThat(type("verify", "--data", root.resolve("nowhere")).text()).contains("no such folder");
  }
}
