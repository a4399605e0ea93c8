package org.firnline.logs;

import java.util.Objects;
import org.firnline.logs.text.ByteSource;

/**
 * One file of a run.
 *
 * @param fileName its name; shown, and a hint to its form
 * @param bytes its bytes
 */
public record GivenLog(String fileName, ByteSource bytes) {
  public GivenLog {
    Objects.requireNonNull(fileName, "fileName");
    Objects.requireNonNull(bytes, "bytes");
  }
}
