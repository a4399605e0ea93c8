package org.firnline.planning;

/** What a check says; ordered from harmless to grave. */
public enum Verdict {
  PASS,
  WATCH,
  STOP
}
