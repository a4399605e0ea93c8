package org.firnline.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.app.store.database.Dialect;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Notes and files put with a run, in both databases. */
@ParameterizedClass
@EnumSource
class PapersTest {
  private static final Instant AT = Instant.parse("2026-11-24T03:20:00Z");

  @Parameter Dialect dialect;

  @TempDir Path root;

  private OpenStore store;
  private long run;

  @BeforeEach
  void open() throws IOException {
    store = Stores.open(dialect, root);
    store.dryers().add("Fen 2", "shelves", "", "");
    long dryer = store.dryers().find("Fen 2").orElseThrow().id();
    RawFile log = store.files().keep(new ByteArrayInputStream(new byte[] {1}), "a.csv");
    run = store.runs().add("a run", dryer, log.id(), Optional.empty());
  }

  @AfterEach
  void close() {
    store.close();
  }

  @Test
  void a_note_keeps_its_moment_and_who_wrote_it() {
    store.notes().add(run, AT, "door opened", "rowan");
    store.notes().addAfterStart(run, 45_000.5, "frost", "");
    assertThat(store.notes().list(run))
        .extracting(KeptNote::text, KeptNote::author, note -> note.second(AT.minusSeconds(60)))
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("door opened", "rowan", 60.0),
            org.assertj.core.groups.Tuple.tuple("frost", "", 45_000.5));
    assertThat(store.notes().list(run + 1)).isEmpty();
  }

  @Test
  void a_withdrawn_note_stays_and_keeps_when_it_was_withdrawn() {
    long id = store.notes().add(run, AT, "wrong run", "");
    store.notes().withdraw(run, id);
    store.notes().withdraw(run, id);
    assertThat(store.notes().find(run, id).orElseThrow().withdrawn()).contains(Stores.NOW);
  }

  @Test
  void a_note_has_one_moment_only() {
    assertThatThrownBy(
            () ->
                new KeptNote(
                    1, 1, Optional.of(AT), OptionalDouble.of(1), "", "", AT, Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not both");
  }

  @Test
  void a_file_comes_back_byte_for_byte_and_the_same_bytes_are_kept_once() throws IOException {
    byte[] bytes = "water 1.1 %".getBytes(StandardCharsets.UTF_8);
    Attachments.About about = new Attachments.About("TEXT", "assay.txt", "Karl Fischer", "rowan");
    long first = store.attachments().keep(run, new ByteArrayInputStream(bytes), about);
    long second = store.attachments().keep(run, new ByteArrayInputStream(bytes), about);
    KeptAttachment kept = store.attachments().find(run, first).orElseThrow();
    assertThat(store.attachments().open(kept).readAllBytes()).isEqualTo(bytes);
    assertThat(store.attachments().find(run, second).orElseThrow().content())
        .isEqualTo(kept.content());
    assertThat(store.attachments().find(run + 1, first)).isEmpty();
    store.attachments().withdraw(run, first);
    assertThat(store.attachments().list(run))
        .extracting(KeptAttachment::withdrawn)
        .containsExactly(Optional.of(Stores.NOW), Optional.empty());
  }

  @Test
  void a_raw_log_is_still_no_attachment() throws IOException {
    store
        .attachments()
        .keep(
            run,
            new ByteArrayInputStream(new byte[] {9}),
            new Attachments.About("TEXT", "a.txt", "", ""));
    assertThat(store.files().listWithoutRun()).isEmpty();
  }
}
