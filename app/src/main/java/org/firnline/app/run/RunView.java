package org.firnline.app.run;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptPlan;
import org.firnline.app.store.RawFile;

/**
 * One run as its page shows it; every text is ready to read.
 *
 * @param id number of the run
 * @param title name of the run
 * @param dryer name of its dryer
 * @param span from when to when the log runs
 * @param file its log as it arrived
 * @param summary the picture in one sentence
 * @param picture what the picture's script draws, JSON
 * @param table the picture in figures
 * @param findings numbered as on the picture
 * @param endpoints when each vessel and the load were dry
 * @param phases the stretches of the run
 * @param account how the file was read
 * @param judged what the run is judged against
 */
record RunView(
    long id,
    String title,
    String dryer,
    String span,
    RawFile file,
    String summary,
    String picture,
    Table table,
    List<FindingRow> findings,
    List<EndpointRow> endpoints,
    List<PhaseRow> phases,
    Account account,
    Judged judged) {

  /** The channels at a few times. */
  record Table(List<String> channels, List<TableRow> rows) {}

  /** All channels at one time, in the order of the table's channels. */
  record TableRow(String time, List<String> values) {}

  /**
   * A finding.
   *
   * @param number as on the picture
   * @param state {@code stop}, {@code watch} or {@code noted}
   */
  record FindingRow(
      int number,
      String state,
      String kind,
      Instant start,
      Instant end,
      String when,
      String text,
      List<String> causes,
      String nextTime,
      List<String> evidence,
      String confidence) {}

  /** When something was dry, by one method. */
  record EndpointRow(
      String what, String method, String at, String between, String confidence, String note) {}

  /** A phase. */
  record PhaseRow(String name, String from, String duration, String confidence, String reason) {}

  /** How the file was read: facts first, then every guess, question and set-aside line. */
  record Account(
      List<Fact> facts,
      List<GuessRow> guesses,
      List<QuestionRow> questions,
      Changes changed,
      List<String> notes,
      List<ChannelRow> channels,
      List<Fact> preamble) {}

  /**
   * Everything about the reading that a person may say otherwise.
   *
   * @param any whether anything was said
   * @param layout about the file as a whole
   * @param columns about single columns
   */
  record Changes(boolean any, List<QuestionRow> layout, List<ColumnRow> columns) {}

  /** What may be said about a column. */
  record ColumnRow(String name, QuestionRow role, QuestionRow unit) {}

  /** A named value. */
  record Fact(String name, String value) {}

  /** Something the file does not say. */
  record GuessRow(String what, String value, String reason, String confidence) {}

  /**
   * Something only a person can settle.
   *
   * @param choice name under which the answer is kept
   * @param answer what was answered, empty if nothing
   * @param refused whether that answer cannot be used
   */
  record QuestionRow(
      String choice,
      String text,
      String assumed,
      List<String> options,
      String answer,
      boolean refused) {}

  /** A column of the file. */
  record ChannelRow(String name, String role, String unit, String confidence, String range) {}

  /**
   * What the run is judged against.
   *
   * @param criticalTemperature as typed or chosen, empty if none
   * @param source where it comes from, empty if there is none
   * @param problem what is wrong with the last one typed, if anything
   */
  record Judged(
      String criticalTemperature,
      String source,
      Optional<Long> planId,
      List<KeptPlan> plans,
      List<KeptDryer> dryers,
      long dryerId,
      Optional<String> problem) {}
}
