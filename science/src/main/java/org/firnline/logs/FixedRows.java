package org.firnline.logs;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firnline.logs.form.FixedWidth;
import org.firnline.logs.text.Lines;
import org.firnline.logs.text.RowStream;

/** The lines of a fixed-width table cut into cells; lines that do not fit stay whole. */
final class FixedRows implements RowStream.Rows {
  private final Lines lines;
  private final FixedWidth columns;
  private final Set<Long> headings;
  private final long bodyStart;

  FixedRows(Lines lines, FixedWidth columns, Set<Long> headings, long bodyStart) {
    this.lines = lines;
    this.columns = columns;
    this.headings = headings;
    this.bodyStart = bodyStart;
  }

  @Override
  public Optional<List<String>> next() throws IOException {
    if (!lines.advance()) {
      return Optional.empty();
    }
    String line = lines.text().replace("\uFEFF", "").stripTrailing();
    if (headings.contains(lines.number())) {
      return Optional.of(columns.cutHeading(line));
    }
    boolean cut = lines.number() >= bodyStart && columns.fits(line);
    return Optional.of(cut ? columns.cut(line) : List.of(line));
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
