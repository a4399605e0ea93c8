package org.firnline.logs.layout;

/** What a cell looks like, as far as the layout is concerned. */
enum CellKind {
  EMPTY,
  NUMBER,
  STAMP,
  /** A word or sign that stands in a number's place. */
  WORD,
  TEXT;

  boolean isMeasured() {
    return this == NUMBER || this == STAMP;
  }
}
