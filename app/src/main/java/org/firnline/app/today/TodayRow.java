package org.firnline.app.today;

import java.util.Optional;

/**
 * One dryer as it stands on Today, every text ready to read.
 *
 * @param dryer its name
 * @param description one line about it
 * @param doing what it is doing, in words
 * @param since since when, or when it last did anything
 * @param run its latest run, if it had one
 * @param big what must be readable from two metres
 * @param progress how far primary drying is, if a plan says how long it takes
 * @param stale says since when there is no data, if data is missing
 * @param worst the worst finding of its latest run
 * @param next what a person must do next
 */
record TodayRow(
    String dryer,
    String description,
    String doing,
    String since,
    Optional<RunLink> run,
    Optional<Big> big,
    Optional<Progress> progress,
    Optional<String> stale,
    Optional<Worst> worst,
    Next next) {

  /** A run to open. */
  record RunLink(long id, String title) {}

  /**
   * The large figure of a row.
   *
   * @param label what it says, small, before it
   * @param text the figure: a clock time or a span of two
   * @param day the day it is on
   */
  record Big(String label, String text, String day) {}

  /**
   * Primary drying as a rule from its start to its latest finish.
   *
   * @param now where the data ends, 0 to 100
   * @param finishFrom where the finish band begins, 0 to 100
   * @param finishLength how long it is; it ends at 100
   * @param words the same in a sentence
   */
  record Progress(double now, double finishFrom, double finishLength, String words) {}

  /**
   * The worst finding.
   *
   * @param state {@code stop}, {@code watch} or {@code pass}
   * @param text what it is
   */
  record Worst(String state, String text) {}

  /**
   * What a person must do next.
   *
   * @param sentence what to do and when, empty where the button says it all
   * @param button words on the button
   * @param link where the button leads
   */
  record Next(String sentence, String button, String link) {}
}
