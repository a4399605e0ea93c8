package org.firnline.logs.layout;

/** What a column mostly holds. */
public enum ColumnKind {
  EMPTY,
  NUMBER,
  DATE,
  TIME,
  DATE_TIME,
  TEXT;

  /** Whether the column holds dates or clock times. */
  public boolean isStamp() {
    return this == DATE || this == TIME || this == DATE_TIME;
  }
}
