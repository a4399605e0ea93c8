package org.firnline.logs.sheet;

import java.io.IOException;
import java.util.Objects;
import org.firnline.logs.text.RowStream;

/**
 * One sheet of a workbook.
 *
 * @param name its name
 * @param rows its rows, opened as often as needed
 */
public record Sheet(String name, RowSource rows) {

  /** Opens the rows of a sheet. */
  @FunctionalInterface
  public interface RowSource {
    /** Fresh rows from the first one. */
    RowStream.Rows open() throws IOException;
  }

  public Sheet {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(rows, "rows");
  }
}
