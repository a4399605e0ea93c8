package org.firnline.logs.table;

/**
 * What became of the lines after the header. {@code read = kept + setAside + rejected}; flagged
 * rows are among the kept ones.
 *
 * @param read lines read after the header, blank ones left out
 * @param kept rows that became samples
 * @param flagged kept rows in which at least one cell is not a good value
 * @param setAside lines that are no samples by their nature: events, repeated headers, statistics
 * @param rejected lines that could not be used
 */
public record RowCounts(long read, long kept, long flagged, long setAside, long rejected) {
  public RowCounts {
    if (read != kept + setAside + rejected) {
      throw new IllegalArgumentException(
          "row counts: read "
              + read
              + " is not kept "
              + kept
              + " + set aside "
              + setAside
              + " + rejected "
              + rejected
              + "; every line must be accounted for");
    }
    if (flagged > kept) {
      throw new IllegalArgumentException(
          "row counts: flagged " + flagged + " of only " + kept + " kept rows");
    }
  }
}
