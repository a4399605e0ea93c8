package org.firnline.app.store.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.firnline.app.store.Attachments;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.KeptAttachment;
import org.firnline.app.store.KeptRun;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.Place;
import org.firnline.app.store.RawFile;
import org.firnline.app.store.Stores;
import org.firnline.app.store.database.Dialect;
import org.firnline.app.store.database.StoreAddress;
import org.firnline.app.store.series.KeptSeries;
import org.firnline.app.store.series.Samples;
import org.firnline.app.store.series.StoredSeries;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource
class KeepingTest {
  private static final Clock CLOCK = Clock.fixed(Stores.NOW, ZoneOffset.UTC);
  private static final String LOG = "t_s,shelf_C\r\n0,-40.0\r\n";
  private static final Samples SAMPLES =
      new Samples(new long[] {0, 60_000, 120_000}, new double[] {-40.1, Double.NaN, -39.9});

  @Parameter Dialect dialect;
  @TempDir Path root;

  private OpenStore store;
  private long run;

  @BeforeEach
  void fill() throws IOException {
    store = Stores.open(dialect, root);
    store.settings().put("place.name", new Place("Harrow Fen Collection", true).name());
    store.dryers().add("Fen 2", "shelves", "Größe 2", "");
    long plan = store.plans().add("Moss", "plan: Moss\n");
    RawFile file =
        store
            .files()
            .keep(new ByteArrayInputStream(LOG.getBytes(StandardCharsets.UTF_8)), "moss.csv");
    run = store.runs().add("Moss", store.dryers().list().get(0).id(), file.id(), Optional.empty());
    store.runs().judgeAgainst(run, OptionalLong.of(plan), OptionalDouble.of(240.15));
    KeptSeries series = new KeptSeries(store.database(), store.changes());
    series.append(series.add(run, "Shelf", "°C"), SAMPLES);
  }

  @AfterEach
  void close() {
    store.close();
  }

  private Verdict verdict() {
    return new Verification(store.source(), store.folder()).verify();
  }

  private BackupReport backup() throws IOException {
    return new Backup(store.source(), dialect, store.folder(), CLOCK).make(root.resolve("copies"));
  }

  private static OpenStore opened(Path folder) {
    DataFolder laboratory = new DataFolder(folder);
    return new OpenStore(laboratory, StoreAddress.file(laboratory.database()), Stores.ROWAN, CLOCK);
  }

  private static void isTheSame(OpenStore other, OpenStore store, long run) throws IOException {
    KeptRun kept = other.runs().find(run).orElseThrow();
    assertThat(kept).isEqualTo(store.runs().find(run).orElseThrow());
    assertThat(other.plans().list()).isEqualTo(store.plans().list());
    assertThat(other.dryers().list()).isEqualTo(store.dryers().list());
    RawFile file = other.files().find(kept.logFileId().orElseThrow()).orElseThrow();
    assertThat(other.files().open(file).readAllBytes())
        .isEqualTo(LOG.getBytes(StandardCharsets.UTF_8));
    StoredSeries series = new StoredSeries(other.database());
    assertThat(series.read(series.list(run).get(0).id())).isEqualTo(SAMPLES);
  }

  @Nested
  class AVerification {
    @Test
    void r_rec_06_findsAnUnalteredLaboratoryUnaltered() {
      Verdict verdict = verdict();
      assertThat(verdict.problems()).isEmpty();
      assertThat(verdict.isUnaltered()).isTrue();
      assertThat(verdict.entries()).isEqualTo(7);
      assertThat(verdict.files()).isEqualTo(1);
      assertThat(verdict.series()).isEqualTo(1);
    }

    @Test
    void r_rec_06_namesTheFirstAlteredRow() {
      store.database().sql("update plan set yaml = 'plan: Mosz'").update();
      store.database().sql("update run set title = 'Mosz'").update();
      assertThat(verdict().first()).contains("plan 1 was altered: yaml");
      assertThat(verdict().problems()).hasSize(2);
    }

    @Test
    void r_rec_06_namesARowThatIsGoneAndOneThatCameFromNowhere() {
      store.database().sql("update run set plan_id = null").update();
      store.database().sql("delete from plan").update();
      store
          .database()
          .sql("insert into plan (id, title, yaml, saved_utc) values (9, 'x', 'x', 'x')")
          .update();
      assertThat(verdict().problems())
          .contains(
              "plan 1 is missing", "plan 9 is not in the audit", "run 1 was altered: plan_id");
    }

    @Test
    void r_rec_01_namesARawFileOfWhichOneByteWasFlipped() throws IOException {
      Path kept = oneRawFile();
      byte[] bytes = Files.readAllBytes(kept);
      bytes[3] ^= 1;
      Files.write(kept, bytes);
      assertThat(verdict().first().orElseThrow()).startsWith("log_file 1 (moss.csv) was altered");
      Files.delete(kept);
      assertThat(verdict().first().orElseThrow()).startsWith("log_file 1 (moss.csv) is missing");
    }

    @Test
    void r_rec_06_namesAnAlteredEntryOfTheAudit() {
      withoutGuards();
      store.database().sql("update audit set why = 'never' where id = 3").update();
      assertThat(verdict().first().orElseThrow())
          .startsWith("audit entry 3 (create plan 1,")
          .endsWith("was altered");
    }

    @Test
    void r_aud_08_namesAnEntryThatIsGoneInTheMiddleOrAtTheEnd() {
      withoutGuards();
      store.database().sql("delete from audit where id = 7").update();
      assertThat(verdict().first().orElseThrow()).startsWith("audit entry 7 is missing");
      store.database().sql("delete from audit where id = 2").update();
      assertThat(verdict().first()).contains("audit entry 2 is missing");
    }

    private Path oneRawFile() throws IOException {
      try (Stream<Path> files = Files.walk(store.folder().rawFiles())) {
        return files.filter(Files::isRegularFile).findFirst().orElseThrow();
      }
    }

    /** What somebody with the database's own password could do. */
    private void withoutGuards() {
      String table = dialect == Dialect.POSTGRESQL ? " on audit" : "";
      store.database().sql("drop trigger audit_is_not_altered" + table).update();
      if (dialect == Dialect.SQLITE) {
        store.database().sql("drop trigger audit_is_not_removed").update();
      }
    }
  }

  @Nested
  class ABackup {
    @Test
    void r_rec_05_isRestoredAndShowsTheSame() throws IOException {
      BackupReport report = backup();
      assertThat(report.files()).isEqualTo(1);
      assertThat(report.auditHash()).isEqualTo(store.audit().head().hash());
      Path target = root.resolve("restored");
      Verdict verdict = Restore.into(report.file(), target);
      assertThat(verdict.lastHash()).isEqualTo(report.auditHash());
      try (OpenStore restored = opened(target)) {
        isTheSame(restored, store, run);
        restored.runs().rename(run, "goes on", store.dryers().list().get(0).id());
        assertThat(new Verification(restored.source(), restored.folder()).verify().problems())
            .isEmpty();
      }
      try (Stream<Path> left = Files.list(root.resolve("copies"))) {
        assertThat(left).containsExactly(report.file());
      }
    }

    @Test
    void r_rec_05_holdsTheFilesPutWithARunToo() throws IOException {
      byte[] cake = "a picture of a cake".getBytes(StandardCharsets.UTF_8);
      store
          .attachments()
          .keep(
              run,
              new ByteArrayInputStream(cake),
              new Attachments.About("image/png", "cake.png", "Vial 7", ""));
      assertThat(verdict().files()).isEqualTo(2);
      Path target = root.resolve("restored");
      Restore.into(backup().file(), target);
      try (OpenStore other = opened(target)) {
        KeptAttachment kept = other.attachments().list(run).get(0);
        assertThat(other.attachments().open(kept).readAllBytes()).isEqualTo(cake);
        Path bytes = other.folder().rawFile(kept.content().sha256());
        Files.write(bytes, new byte[] {1});
        assertThat(new Verification(other.source(), other.folder()).verify().first())
            .hasValueSatisfying(first -> assertThat(first).contains("attachment 1 (cake.png)"));
      }
    }

    @Test
    void getsANameOfItsOwn() throws IOException {
      assertThat(backup().file()).isNotEqualTo(backup().file());
    }

    @Test
    void isNotRestoredOverALaboratory() throws IOException {
      BackupReport report = backup();
      assertThatThrownBy(() -> Restore.into(report.file(), store.folder().root()))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("is not empty");
    }

    @Test
    void isRefusedWhenAByteOfItChanged() throws IOException {
      BackupReport report = backup();
      byte[] bytes = Files.readAllBytes(report.file());
      bytes[bytes.length / 2] ^= 0x10;
      Files.write(report.file(), bytes);
      Path target = root.resolve("restored");
      assertThatThrownBy(() -> Restore.into(report.file(), target))
          .isInstanceOfAny(IllegalArgumentException.class, IOException.class);
      assertThat(target).doesNotExist();
    }

    @Test
    void isRefusedWhenItIsNone() throws IOException {
      Path text = Files.writeString(root.resolve("letter.zip"), "Dear all");
      assertThatThrownBy(() -> Restore.into(text, root.resolve("restored")))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("no intact zip");
    }

    @Test
    void isNotMadeOfAnAlteredLaboratory() {
      store.database().sql("update plan set yaml = 'plan: Mosz'").update();
      assertThatThrownBy(KeepingTest.this::backup).hasMessageContaining("plan 1 was altered");
      assertThat(root.resolve("copies")).isEmptyDirectory();
    }
  }

  @Nested
  class AMove {
    @Test
    void bringsEveryRowToTheOtherKindOfDatabase() throws IOException {
      Dialect other = dialect == Dialect.SQLITE ? Dialect.POSTGRESQL : Dialect.SQLITE;
      StoreAddress there = Stores.empty(other, Files.createDirectory(root.resolve("there")));
      try (OpenStore moved = new OpenStore(store.folder(), there, Stores.ROWAN, CLOCK)) {
        Verdict verdict = Relocation.move(store, moved);
        assertThat(verdict.problems()).isEmpty();
        isTheSame(moved, store, run);
        long next = moved.plans().add("Sedge", "plan: Sedge\n");
        assertThat(next).isEqualTo(2);
        assertThatThrownBy(() -> Relocation.move(store, moved)).hasMessageContaining("not empty");
        assertThat(moved.plans().list()).hasSize(2);
      }
    }

    @Test
    void isRefusedForAnAlteredLaboratory() throws IOException {
      store.database().sql("update plan set yaml = 'plan: Mosz'").update();
      StoreAddress there = Stores.empty(dialect, Files.createDirectory(root.resolve("there")));
      try (OpenStore moved = new OpenStore(store.folder(), there, Stores.ROWAN, CLOCK)) {
        assertThatThrownBy(() -> Relocation.move(store, moved))
            .hasMessageContaining("plan 1 was altered");
        assertThat(moved.plans().list()).isEqualTo(List.of());
      }
    }
  }
}
