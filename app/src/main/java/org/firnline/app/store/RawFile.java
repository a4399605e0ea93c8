package org.firnline.app.store;

import java.time.Instant;
import java.util.Map;

/**
 * A file as it arrived, kept unaltered.
 *
 * @param id its number in this laboratory
 * @param sha256 SHA-256 of its bytes, 64 lower-case hexadecimal digits
 * @param size_bytes length
 * @param originalName the name it had where it came from, for people only; never used as a path
 * @param arrived when it was kept
 * @param choices what a person answered about how to read it, by name of the choice
 */
public record RawFile(
    long id,
    String sha256,
    long size_bytes,
    String originalName,
    Instant arrived,
    Map<String, String> choices) {

  public RawFile {
    choices = Map.copyOf(choices);
  }
}
