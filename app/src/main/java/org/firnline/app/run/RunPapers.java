package org.firnline.app.run;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.firnline.app.run.RunView.AttachmentRow;
import org.firnline.app.run.RunView.NoteRow;
import org.firnline.app.store.Attachments;
import org.firnline.app.store.KeptAttachment;
import org.firnline.app.store.KeptNote;
import org.firnline.app.store.KeptNotes;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.Shown;
import org.firnline.logs.Log;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Notes and files of a run in words. */
@Component
class RunPapers {
  private final KeptNotes notes;
  private final Attachments attachments;
  private final Shown shown;
  private final MessageSource words;

  RunPapers(KeptNotes notes, Attachments attachments, Shown shown, MessageSource words) {
    this.notes = notes;
    this.attachments = attachments;
    this.shown = shown;
    this.words = words;
  }

  /** The notes of a run as kept. */
  List<KeptNote> kept(long runId) {
    return notes.list(runId);
  }

  /** Notes in order of what they speak of. */
  List<NoteRow> notes(long runId, Log log, LogClock clock, Locale locale) {
    Instant start = log.start().orElse(Instant.EPOCH);
    return notes.list(runId).stream()
        .sorted(Comparator.comparingDouble((KeptNote note) -> note.second(start)))
        .map(note -> row(note, start, clock, locale))
        .toList();
  }

  private NoteRow row(KeptNote note, Instant start, LogClock clock, Locale locale) {
    Instant at = start.plusMillis(Math.round(note.second(start) * 1_000));
    return new NoteRow(
        note.id(),
        note.at().isPresent() ? shown.moment(at) : clock.moment(at),
        note.text(),
        by(note.author(), note.written(), locale),
        note.withdrawn().map(shown::fullMoment).orElse(""));
  }

  List<AttachmentRow> attachments(long runId, Locale locale) {
    return attachments.list(runId).stream().map(file -> row(file, locale)).toList();
  }

  private AttachmentRow row(KeptAttachment file, Locale locale) {
    return new AttachmentRow(
        file.id(),
        file.originalName(),
        file.caption(),
        shown.size(file.content().size_bytes()),
        file.content().sha256(),
        AttachmentKind.named(file.kind()).map(AttachmentKind::isPicture).orElse(false),
        by(file.author(), file.added(), locale),
        file.withdrawn().map(shown::fullMoment).orElse(""));
  }

  private String by(String author, Instant when, Locale locale) {
    String moment = shown.fullMoment(when);
    return author.isEmpty()
        ? words.getMessage("run.paper.written", new Object[] {moment}, locale)
        : words.getMessage("run.paper.written-by", new Object[] {author, moment}, locale);
  }
}
