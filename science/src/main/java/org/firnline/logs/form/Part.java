package org.firnline.logs.form;

import java.util.Objects;
import org.firnline.logs.text.ByteSource;

/**
 * Something inside a packed file that can be a log of its own: a file of an archive, a sheet of a
 * workbook.
 *
 * @param name its name inside the packed file
 * @param isSheet whether its text is made of a sheet's cells: tab-separated UTF-8, decimal points
 * @param text its bytes, unpacked while they are read
 */
public record Part(String name, boolean isSheet, ByteSource text) {
  public Part {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(text, "text");
  }
}
