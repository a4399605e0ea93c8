package org.firnline.logs.sheet;

import java.io.IOException;
import java.io.InputStream;

/** The named files inside a workbook. */
public interface Entries {
  /** Whether there is one of this name. */
  boolean holds(String name);

  /**
   * Opens one.
   *
   * @throws IOException if there is none of this name
   */
  InputStream open(String name) throws IOException;
}
