package org.firnline.app.run;

import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.firnline.app.reading.ReviewJson;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.app.reading.ReviewedRuns;
import org.firnline.app.store.RawFile;
import org.firnline.app.store.RawFiles;
import org.firnline.app.web.NothingHere;
import org.firnline.logs.Log;
import org.springframework.core.io.InputStreamResource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The channels of a run for the picture's script and for other programs. */
@Controller
class RunChannelsController {
  private static final int MOST_PIXELS = 8_000;

  private final ReviewedRuns reviewed;
  private final RawFiles files;

  RunChannelsController(ReviewedRuns reviewed, RawFiles files) {
    this.reviewed = reviewed;
    this.files = files;
  }

  /** Lines for a stretch of the picture, no denser than it has pixels. */
  @GetMapping(path = "/runs/{id}/series", produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<String> series(
      @PathVariable long id,
      @RequestParam double from,
      @RequestParam double to,
      @RequestParam int pixels) {
    Log log = find(id).log().orElseThrow(NothingHere::new);
    int columns = Math.max(1, Math.min(MOST_PIXELS, pixels));
    return ResponseEntity.ok(PictureLines.json(log, from, to, columns));
  }

  /**
   * Which part of a run is asked for.
   *
   * @param from first second since the log's first row
   * @param to last second
   * @param channels names of channels as the picture gives them, or {@code all}; empty for those
   *     that are drawn
   * @param units {@code si}, else the units of the picture
   */
  record Part(
      Optional<Double> from,
      Optional<Double> to,
      Optional<String> channels,
      Optional<String> units) {

    private ChannelFile of(Log log) {
      int first = from.map(second -> rowAt(log, second)).orElse(0);
      int end = to.map(second -> rowAt(log, second + 0.001)).orElse(log.time().size());
      Set<String> keys =
          Arrays.stream(channels.orElse("").split(","))
              .filter(Predicate.not(String::isBlank))
              .collect(Collectors.toUnmodifiableSet());
      boolean si = units.filter("si"::equals).isPresent();
      return new ChannelFile(log, keys, si, first, Math.max(first, end));
    }

    private static int rowAt(Log log, double second) {
      Instant start = log.start().orElse(Instant.EPOCH);
      return log.time().indexAtOrAfter(start.plusMillis((long) Math.ceil(second * 1_000)));
    }
  }

  @GetMapping("/runs/{id}/channels.csv")
  void csv(@PathVariable long id, Part part, HttpServletResponse response) throws IOException {
    ReviewedRun run = find(id);
    Log log = run.log().orElseThrow(NothingHere::new);
    asFile(response, "text/csv;charset=UTF-8", run.run().title() + ".csv");
    try (Writer out = writer(response)) {
      part.of(log).csv(out);
    }
  }

  @GetMapping("/runs/{id}/channels.json")
  void json(@PathVariable long id, Part part, HttpServletResponse response) throws IOException {
    ReviewedRun run = find(id);
    Log log = run.log().orElseThrow(NothingHere::new);
    asFile(response, MediaType.APPLICATION_JSON_VALUE, run.run().title() + ".json");
    try (Writer out = writer(response)) {
      part.of(log).json(out, run.run().title());
    }
  }

  /** What {@code firnline review --json} says about this run's log. */
  @GetMapping(path = "/runs/{id}/review.json", produces = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<String> review(@PathVariable long id) {
    ReviewedRun run = find(id);
    return ResponseEntity.ok()
        .header(HttpHeaders.CONTENT_DISPOSITION, named(run.run().title() + " review.json"))
        .body(ReviewJson.of(run.reading(), run.review()).toString());
  }

  /** The log exactly as it arrived. */
  @GetMapping("/runs/{id}/log")
  ResponseEntity<InputStreamResource> log(@PathVariable long id) throws IOException {
    RawFile file = find(id).file();
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_OCTET_STREAM)
        .contentLength(file.size_bytes())
        .header(HttpHeaders.CONTENT_DISPOSITION, named(file.originalName()))
        .body(new InputStreamResource(files.open(file)));
  }

  private static void asFile(HttpServletResponse response, String type, String name) {
    response.setContentType(type);
    response.setHeader(HttpHeaders.CONTENT_DISPOSITION, named(name));
  }

  private static String named(String name) {
    return ContentDisposition.attachment()
        .filename(name, StandardCharsets.UTF_8)
        .build()
        .toString();
  }

  private static Writer writer(HttpServletResponse response) throws IOException {
    return new BufferedWriter(
        new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8), 1 << 16);
  }

  private ReviewedRun find(long id) {
    return reviewed.find(id).orElseThrow(NothingHere::new);
  }
}
