package org.firnline.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.firnline.app.store.audit.AuditEntry;
import org.firnline.app.store.audit.AuditQuestion;
import org.firnline.app.store.database.Dialect;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource
class KeptRecordsTest {
  @Parameter Dialect dialect;
  @TempDir Path root;

  private OpenStore store;

  @BeforeEach
  void open() {
    store = Stores.open(dialect, root);
  }

  @AfterEach
  void close() {
    store.close();
  }

  private long dryer() {
    store.dryers().add("Fen 2", "shelves", "Shelf dryer", "");
    return store.dryers().find("Fen 2").orElseThrow().id();
  }

  private RawFile file() throws IOException {
    return store
        .files()
        .keep(new ByteArrayInputStream("t,p\n".getBytes(StandardCharsets.UTF_8)), "log.csv");
  }

  private List<AuditEntry> about(String subject) {
    return store.audit().find(new AuditQuestion("", "", subject, "", "", "", "", 99), 99);
  }

  @Test
  void aPlanComesBackLetterForLetter() {
    String yaml = "plan: Größe µbar\r\nload:\n  fill: 3 mL\n";
    long id = store.plans().add("Größe", yaml);
    KeptPlan kept = store.plans().find(id).orElseThrow();
    assertThat(kept.yaml()).isEqualTo(yaml);
    assertThat(kept.saved()).isEqualTo(Stores.NOW);
    assertThat(store.plans().list()).containsExactly(kept);
  }

  @Test
  void aRunIsJudgedRenamedAndSummarized() throws IOException {
    long dryer = dryer();
    long plan = store.plans().add("p", "plan: p\n");
    Instant start = Instant.parse("2026-11-20T08:00:00Z");
    long id = store.runs().add("run", dryer, file().id(), Optional.of(start));
    store.runs().judgeAgainst(id, OptionalLong.of(plan), OptionalDouble.of(240.15));
    store.runs().rename(id, "another name", dryer);
    store
        .runs()
        .summarize(id, new RunSummary(Optional.of(start), Optional.empty(), "watch", "warm"));
    KeptRun run = store.runs().find(id).orElseThrow();
    assertThat(run.title()).isEqualTo("another name");
    assertThat(run.criticalTemperature_K()).hasValue(240.15);
    assertThat(run.planId()).hasValue(plan);
    assertThat(run.worst()).contains(new KeptRun.Worst("watch", "warm"));
    assertThat(store.runs().findLatest(dryer)).contains(run);
    assertThat(store.runs().findByLog(run.logFileId().orElseThrow())).contains(run);
    store.runs().judgeAgainst(id, OptionalLong.empty(), OptionalDouble.empty());
    assertThat(store.runs().find(id).orElseThrow().criticalTemperature_K()).isEmpty();
  }

  @Test
  void r_aud_01_everyWriteOfARecordHasItsEntry() throws IOException {
    long dryer = dryer();
    long id = store.runs().add("run", dryer, file().id(), Optional.empty());
    store.runs().rename(id, "another name", dryer);
    store.files().choose(file(), java.util.Map.of("zone", "UTC"));
    store.plans().add("p", "plan: p\n");
    new Places(store.settings()).name(new Place("Harrow Fen Collection", true));
    assertThat(about("dryer")).extracting(AuditEntry::action).containsExactly("create");
    assertThat(about("run")).extracting(AuditEntry::action).containsExactly("change", "create");
    assertThat(about("log_file"))
        .extracting(AuditEntry::action)
        .containsExactly("change", "import");
    assertThat(about("plan")).extracting(AuditEntry::action).containsExactly("create");
    assertThat(about("setting")).extracting(AuditEntry::action).containsOnly("configure");
  }

  @Test
  void r_aud_02_anEntrySaysWhoWhenWhatOldNewAndWhy() throws IOException {
    long dryer = dryer();
    long id = store.runs().add("run", dryer, file().id(), Optional.empty());
    store.runs().rename(id, "another name", dryer);
    AuditEntry entry = about("run").get(0);
    assertThat(entry.occasion().person()).isEqualTo("rowan");
    assertThat(entry.occasion().why()).isEqualTo("as agreed");
    assertThat(entry.at()).isEqualTo(Stores.NOW);
    assertThat(entry.zone()).isEqualTo("Z");
    assertThat(entry.subjectKey()).isEqualTo(Long.toString(id));
    assertThat(entry.oldValues()).isEqualTo("{\"title\":\"run\"}");
    assertThat(entry.newValues()).isEqualTo("{\"title\":\"another name\"}");
  }
}
