package org.firnline.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * Keeps raw files byte for byte, named by their SHA-256. The bytes reach the disk before the row
 * that speaks of them is written, so a row never points at half a file.
 */
@Component
public class RawFiles {
  private final BytesByHash bytes;
  private final RawFileQueries queries;
  private final Clock clock;

  RawFiles(BytesByHash bytes, RawFileQueries queries, Clock clock) {
    this.bytes = bytes;
    this.queries = queries;
    this.clock = clock;
  }

  /**
   * Keeps all bytes of a stream.
   *
   * @param content read to its end, not closed
   * @param originalName the name it came with
   * @return the kept file; the earlier one when the same bytes were kept before
   */
  public RawFile keep(InputStream content, String originalName) throws IOException {
    KeptBytes kept = bytes.keep(content);
    if (queries.findBySha256(kept.sha256()).isEmpty()) {
      queries.add(
          kept.sha256(),
          kept.size_bytes(),
          originalName,
          clock.instant().truncatedTo(ChronoUnit.SECONDS));
    }
    return queries.findBySha256(kept.sha256()).orElseThrow();
  }

  /** The file with this number, if there is one. */
  public Optional<RawFile> find(long id) {
    return queries.find(id);
  }

  /** Kept files that no run uses, newest first. */
  public List<RawFile> listWithoutRun() {
    return queries.listWithoutRun();
  }

  /** Remembers what a person answered about how to read a file. */
  public void choose(RawFile file, Map<String, String> choices) {
    queries.choose(file.id(), choices);
  }

  /** Opens the bytes of a kept file. */
  public InputStream open(RawFile file) throws IOException {
    return bytes.open(file.sha256(), file.originalName());
  }
}
