package org.firnline.logs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The example logs with known truth that ship with the tests. */
public final class SharedLogs {
  private SharedLogs() {}

  /** Bytes of an example log. */
  public static byte[] bytes(String name) {
    try (InputStream in = SharedLogs.class.getResourceAsStream("/logs/" + name)) {
      if (in == null) {
        throw new IllegalArgumentException("no example log " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** An example log, read. */
  public static Log read(String name) {
    return new LogReader().read(name, bytes(name)).log().orElseThrow();
  }
}
