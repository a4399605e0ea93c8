package org.firnline.logs.layout;

/** What a word of a column heading is about. Words are data; what topics add up to is code. */
public enum Topic {
  SHELF,
  SET_POINT,
  ACTUAL,
  PRODUCT,
  THERMOCOUPLE,
  COLLECTOR,
  PRESSURE,
  CAPACITANCE,
  THERMAL,
  CHAMBER,
  ROOM,
  SURFACE,
  WALL,
  FLASK,
  DEW_POINT,
  MESSAGE,
  STEP,
  WEIGHT,
  RATE,
  RECORD,
  TIME,
  ELAPSED,
  MACHINE
}
