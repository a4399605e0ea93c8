package org.firnline.app.run;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.Principal;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Optional;
import org.firnline.app.store.Attachments;
import org.firnline.app.store.KeptAttachment;
import org.firnline.app.store.KeptNotes;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.web.NothingHere;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.InputStreamResource;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** Notes and files that people put with a run. */
@Controller
class RunPapersPage {
  /** Largest file taken; photos of phones are a tenth of it. */
  static final long LARGEST_BYTES = 50_000_000;

  private static final int MOST_FILES = 500;
  private static final int LONGEST_NOTE = 4_000;
  private static final int LONGEST_NAME = 200;
  private static final double HOUR_S = 3_600;
  private static final Duration KEPT_BY_BROWSER = Duration.ofDays(365);

  private final KeptRuns runs;
  private final KeptNotes notes;
  private final Attachments attachments;
  private final RunPage page;
  private final Clock clock;

  RunPapersPage(
      KeptRuns runs, KeptNotes notes, Attachments attachments, RunPage page, Clock clock) {
    this.runs = runs;
    this.notes = notes;
    this.attachments = attachments;
    this.page = page;
    this.clock = clock;
  }

  /**
   * Keeps a note.
   *
   * @param at when it happened, as a field for date and time gives it, or hours since the log's
   *     first row; empty for now
   */
  @PostMapping("/runs/{id}/notes")
  String note(
      @PathVariable long id,
      @RequestParam String text,
      @RequestParam(defaultValue = "") String at,
      @Nullable Principal person,
      Model model,
      Locale locale) {
    requireRun(id);
    Refused.Note typed = new Refused.Note(text, at);
    if (text.isBlank() || text.length() > LONGEST_NOTE) {
      return page.refuse(id, Refused.note(typed, "run.note.empty"), model, locale);
    }
    String author = name(person);
    try {
      if (at.isBlank()) {
        notes.add(id, clock.instant(), text.strip(), author);
      } else if (at.contains("-")) {
        Instant when = LocalDateTime.parse(at.strip()).atZone(clock.getZone()).toInstant();
        notes.add(id, when, text.strip(), author);
      } else {
        double hours = Double.parseDouble(at.strip().replace(',', '.'));
        notes.addAfterStart(id, hours * HOUR_S, text.strip(), author);
      }
    } catch (DateTimeException | NumberFormatException e) {
      return page.refuse(id, Refused.note(typed, "run.note.when-problem"), model, locale);
    }
    return "redirect:/runs/" + id + "#notes";
  }

  @PostMapping("/runs/{id}/notes/{note}/withdraw")
  String withdrawNote(@PathVariable long id, @PathVariable long note) {
    if (notes.find(id, note).isEmpty()) {
      throw new NothingHere();
    }
    notes.withdraw(id, note);
    return "redirect:/runs/" + id + "#notes";
  }

  /** Keeps a file with a run, if it is of a kind that can do no harm when it is opened. */
  @PostMapping("/runs/{id}/attachments")
  String attach(
      @PathVariable long id,
      @RequestParam("file") MultipartFile upload,
      @RequestParam(defaultValue = "") String caption,
      @Nullable Principal person,
      Model model,
      Locale locale)
      throws IOException {
    requireRun(id);
    String name = nameOf(upload);
    if (upload.isEmpty()) {
      return page.refuse(id, Refused.file(caption, "run.file.missing"), model, locale);
    }
    if (upload.getSize() > LARGEST_BYTES || attachments.list(id).size() >= MOST_FILES) {
      return page.refuse(id, Refused.file(caption, "run.file.too-large"), model, locale);
    }
    try (InputStream content = new BufferedInputStream(upload.getInputStream())) {
      content.mark(AttachmentKind.HEAD + 1);
      Optional<AttachmentKind> kind =
          AttachmentKind.of(content.readNBytes(AttachmentKind.HEAD), name);
      content.reset();
      if (kind.isEmpty()) {
        return page.refuse(id, Refused.file(caption, "run.file.kind"), model, locale);
      }
      attachments.keep(
          id,
          content,
          new Attachments.About(kind.get().name(), name, shortened(caption), name(person)));
    }
    return "redirect:/runs/" + id + "#files";
  }

  @PostMapping("/runs/{id}/attachments/{file}/withdraw")
  String withdrawFile(@PathVariable long id, @PathVariable long file) {
    if (attachments.find(id, file).isEmpty()) {
      throw new NothingHere();
    }
    attachments.withdraw(id, file);
    return "redirect:/runs/" + id + "#files";
  }

  /** A file as it came: to be saved, never run or shown as a page of ours. */
  @GetMapping("/runs/{id}/attachments/{file}")
  ResponseEntity<InputStreamResource> file(@PathVariable long id, @PathVariable long file)
      throws IOException {
    KeptAttachment kept = attachments.find(id, file).orElseThrow(NothingHere::new);
    AttachmentKind kind = AttachmentKind.named(kept.kind()).orElseThrow(NothingHere::new);
    ContentDisposition asFile =
        ContentDisposition.attachment()
            .filename(kept.originalName(), StandardCharsets.UTF_8)
            .build();
    return ResponseEntity.ok()
        .contentType(MediaType.parseMediaType(kind.mediaType()))
        .contentLength(kept.content().size_bytes())
        .header(HttpHeaders.CONTENT_DISPOSITION, asFile.toString())
        .header("Content-Security-Policy", "default-src 'none'; sandbox")
        .body(new InputStreamResource(attachments.open(kept)));
  }

  /** A photo made small. */
  @GetMapping("/runs/{id}/attachments/{file}/small")
  ResponseEntity<byte[]> small(@PathVariable long id, @PathVariable long file) throws IOException {
    KeptAttachment kept =
        attachments
            .find(id, file)
            .filter(
                f -> AttachmentKind.named(f.kind()).map(AttachmentKind::isPicture).orElse(false))
            .orElseThrow(NothingHere::new);
    int orientation;
    try (InputStream content = attachments.open(kept)) {
      orientation = PhotoOrientation.of(content.readNBytes(PhotoOrientation.HEAD));
    }
    try (InputStream content = attachments.open(kept)) {
      byte[] picture = Thumbnail.of(content, orientation).orElseThrow(NothingHere::new);
      return ResponseEntity.ok()
          .contentType(MediaType.IMAGE_JPEG)
          .cacheControl(CacheControl.maxAge(KEPT_BY_BROWSER).cachePrivate().immutable())
          .body(picture);
    }
  }

  private void requireRun(long id) {
    if (runs.find(id).isEmpty()) {
      throw new NothingHere();
    }
  }

  private static String name(@Nullable Principal person) {
    return person == null ? "" : person.getName();
  }

  private static String shortened(String caption) {
    return caption.strip().substring(0, Math.min(LONGEST_NAME, caption.strip().length()));
  }

  /** The last part of the name a browser sends, which some send with a path. */
  private static String nameOf(MultipartFile upload) {
    String sent = Optional.ofNullable(upload.getOriginalFilename()).orElse("file");
    String name = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
    return name.isBlank() ? "file" : name.substring(Math.max(0, name.length() - LONGEST_NAME));
  }
}
