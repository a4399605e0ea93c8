package org.firnline.app.store.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.Stores;
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
class ChangesTest {
  private static final AuditedTable PLAN = AuditedTable.of("plan");

  @Parameter Dialect dialect;
  @TempDir Path root;

  private final AtomicReference<String> why = new AtomicReference<>("because");
  private final AtomicReference<Instant> now = new AtomicReference<>(Stores.NOW);
  private OpenStore store;

  @BeforeEach
  void open() {
    store =
        Stores.open(dialect, root, () -> new Occasion("rowan", "page", why.get()), new Movable());
  }

  @AfterEach
  void close() {
    store.close();
  }

  private final class Movable extends Clock {
    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now.get();
    }
  }

  private void title(long id, String title) {
    store
        .changes()
        .change(
            PLAN,
            id,
            () ->
                store
                    .database()
                    .sql("update plan set title = :title where id = :id")
                    .param("title", title)
                    .param("id", id)
                    .update());
  }

  private List<AuditEntry> all() {
    try (var entries = store.audit().stream(AuditQuestion.all())) {
      return entries.toList();
    }
  }

  private long rows(String table) {
    return store.database().sql("select count(*) from " + table).query(Long.class).single();
  }

  @Test
  void r_aud_04_aChangeThatFailsLeavesNeitherRowNorEntry() {
    assertThatThrownBy(
            () ->
                store
                    .changes()
                    .together(
                        () -> {
                          store.plans().add("p", "plan: p\n");
                          throw new IllegalStateException("power cut");
                        }))
        .hasMessage("power cut");
    assertThat(rows("plan")).isZero();
    assertThat(rows("audit")).isZero();
    assertThat(store.audit().head().entries()).isZero();
  }

  @Test
  void r_aud_04_anEntryThatFailsTakesTheChangeBack() {
    store
        .database()
        .sql(
            "insert into audit (id, at_utc, zone, person, via, action, subject, subject_key,"
                + " old_values, new_values, why, previous, hash)"
                + " values (1, '', '', '', '', '', '', '', '', '', '', '', 'x')")
        .update();
    assertThatThrownBy(() -> store.plans().add("p", "plan: p\n"))
        .isInstanceOf(org.springframework.dao.DataAccessException.class);
    assertThat(rows("plan")).isZero();
  }

  @Test
  void r_aud_03_anEntryCanNeitherBeAlteredNorRemoved() {
    store.plans().add("p", "plan: p\n");
    for (String attempt :
        List.of("update audit set why = 'other'", "delete from audit", "delete from audit_head")) {
      assertThatThrownBy(() -> store.database().sql(attempt).update())
          .as(attempt)
          .hasMessageContaining("never");
    }
    assertThat(all()).singleElement().extracting(e -> e.occasion().why()).isEqualTo("because");
  }

  @Test
  void r_aud_03_aRowIsNeverRemovedThroughTheDoor() {
    long id = store.plans().add("p", "plan: p\n");
    assertThatThrownBy(
            () ->
                store
                    .changes()
                    .change(
                        PLAN,
                        id,
                        () ->
                            store
                                .database()
                                .sql("delete from plan where id = :id")
                                .param("id", id)
                                .update()))
        .hasMessageContaining("voided, never removed");
    assertThat(rows("plan")).isEqualTo(1);
  }

  @Test
  void r_aud_02_aControlledLaboratoryRefusesAChangeWithoutReason() {
    long id = store.plans().add("p", "plan: p\n");
    why.set(" ");
    title(id, "open: reasons are welcome, not asked");
    why.set("we follow the rules now");
    store.settings().put(Profile.SETTING, Profile.CONTROLLED.key());
    why.set(" ");
    assertThatThrownBy(() -> title(id, "no reason")).isInstanceOf(ReasonMissing.class);
    title(id, "open: reasons are welcome, not asked");
    why.set("typing error");
    title(id, "with reason");
    assertThat(store.plans().find(id).orElseThrow().title()).isEqualTo("with reason");
  }

  @Test
  void r_aud_01_aClockThatIsSetBackIsItsOwnEntry() {
    store.plans().add("p", "plan: p\n");
    now.set(Stores.NOW.minusSeconds(3_600));
    store.plans().add("q", "plan: q\n");
    assertThat(all()).extracting(AuditEntry::action).containsExactly("create", "clock", "create");
    assertThat(all().get(1).newValues()).contains("13:02:00");
  }

  @Test
  void r_rec_06_eachEntryHoldsTheHashOfTheOneBefore() {
    IntStream.range(0, 5).forEach(n -> store.plans().add("p" + n, "plan: p\n"));
    List<AuditEntry> entries = all();
    String previous = "0".repeat(64);
    for (AuditEntry entry : entries) {
      assertThat(entry.previous()).isEqualTo(previous);
      assertThat(entry.hash()).isEqualTo(entry.computedHash());
      previous = entry.hash();
    }
    assertThat(store.audit().head()).isEqualTo(new AuditTrail.Head(5, previous));
  }

  @Test
  void writersAtTheSameTimeQueueInOneChain() {
    IntStream.range(0, 40).parallel().forEach(n -> store.plans().add("p" + n, "plan: p\n"));
    assertThat(all())
        .extracting(AuditEntry::number)
        .containsExactlyElementsOf(IntStream.rangeClosed(1, 40).mapToObj(Long::valueOf).toList());
    assertThat(rows("plan")).isEqualTo(40);
  }

  @Test
  void aSecretIsKeptAsAHashOnly() {
    AuditedTable secret = PLAN.secret("yaml");
    long id =
        store
            .changes()
            .add(
                secret,
                () ->
                    store
                        .database()
                        .sql(
                            "insert into plan (title, yaml, saved_utc)"
                                + " values ('p', 'hush', 'now') returning id")
                        .query(Long.class)
                        .single());
    assertThat(id).isPositive();
    assertThat(all().get(0).newValues()).contains("sha256:").doesNotContain("hush");
  }

  @Test
  void r_aud_06_entriesAreFoundByWhoWhatWhenAndText() {
    long id = store.plans().add("moss", "plan: p\n");
    title(id, "Moss with trehalose");
    store.changes().note(Action.EXPORT, "audit", "csv", Map.of("rows", "7"));
    AuditQuestion text = new AuditQuestion("", "", "", "", "", "", "TREHALOSE", 99);
    assertThat(store.audit().find(text, 9)).hasSize(1);
    assertThat(store.audit().find(AuditQuestion.about("plan", Long.toString(id)), 9)).hasSize(2);
    assertThat(store.audit().find(AuditQuestion.all().below(3), 9)).hasSize(2);
    AuditQuestion later =
        new AuditQuestion("rowan", "export", "", "", "2026-11-25", "2026-11-26", "", 99);
    assertThat(store.audit().find(later, 9))
        .extracting(AuditEntry::subject)
        .containsExactly("audit");
    assertThat(store.audit().persons()).containsExactly("rowan");
    assertThat(store.audit().subjects()).containsExactly("audit", "plan");
  }
}
