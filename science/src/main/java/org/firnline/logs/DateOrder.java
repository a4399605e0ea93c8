package org.firnline.logs;

/** In which order the fields of a date written in figures stand. */
public enum DateOrder {
  DAY_MONTH_YEAR("day month year"),
  MONTH_DAY_YEAR("month day year"),
  YEAR_MONTH_DAY("year month day");

  private final String label;

  DateOrder(String label) {
    this.label = label;
  }

  /** The words shown to people and used in answers for machines. */
  public String label() {
    return label;
  }
}
