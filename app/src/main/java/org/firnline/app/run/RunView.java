package org.firnline.app.run;

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
 * @param startKnown whether the log says when it began
 * @param file its log as it arrived
 * @param summary the picture in one sentence
 * @param picture what the picture's script draws, JSON
 * @param table the picture in figures
 * @param findings numbered as on the picture
 * @param events lettered as on the picture
 * @param notes what people wrote, withdrawn notes too
 * @param attachments files put with the run, withdrawn ones too
 * @param compared what is laid over and behind the run
 * @param verdicts what all methods together say about the ice
 * @param steps the plan beside what happened, empty without a plan
 * @param endpoints when each vessel and the load were dry
 * @param phases the stretches of the run
 * @param account how the file was read
 * @param judged what the run is judged against
 * @param refused what was typed and cannot be used
 */
record RunView(
    long id,
    String title,
    String dryer,
    String span,
    boolean startKnown,
    RawFile file,
    String summary,
    String picture,
    Table table,
    List<FindingRow> findings,
    List<EventRow> events,
    List<NoteRow> notes,
    List<AttachmentRow> attachments,
    Compared compared,
    List<Judgements.VerdictRow> verdicts,
    List<Judgements.StepRow> steps,
    List<EndpointRow> endpoints,
    List<PhaseRow> phases,
    Account account,
    Judged judged,
    Refused refused) {

  /** The channels at a few times. */
  record Table(List<String> channels, List<TableRow> rows) {}

  /** All channels at one time, in the order of the table's channels. */
  record TableRow(String time, List<String> values) {}

  /**
   * A finding.
   *
   * @param number as on the picture
   * @param state {@code stop}, {@code watch} or {@code noted}
   * @param from_s its first second since the log's first row
   * @param to_s its last second
   */
  record FindingRow(
      int number,
      String state,
      String kind,
      double from_s,
      double to_s,
      String when,
      String text,
      List<String> causes,
      String nextTime,
      List<EvidenceRow> evidence,
      String confidence) {}

  /**
   * Where a finding can be seen.
   *
   * @param text the channel and what it shows
   * @param channels keys of the lines that show it
   * @param from_s first second since the log's first row
   * @param to_s last second
   */
  record EvidenceRow(String text, List<String> channels, double from_s, double to_s) {}

  /**
   * Something the log says in words, or a person noted.
   *
   * @param letter as on the picture
   * @param t_s seconds since the log's first row
   * @param kind what sort of thing, for the script
   * @param name the same for people
   */
  record EventRow(String letter, double t_s, String kind, String name, String text, String when) {}

  /**
   * A note.
   *
   * @param by who wrote it and when
   * @param withdrawn when it was withdrawn; empty if it stands
   */
  record NoteRow(long id, String when, String text, String by, String withdrawn) {}

  /**
   * A file put with the run.
   *
   * @param picture whether it can be shown as a small picture
   * @param by who added it and when
   * @param withdrawn when it was withdrawn; empty if it stands
   */
  record AttachmentRow(
      long id,
      String name,
      String caption,
      String size,
      String sha256,
      boolean picture,
      String by,
      String withdrawn) {}

  /**
   * What is laid over and behind the run.
   *
   * @param others runs that can be laid over it
   * @param phases moments at which two runs can be brought together
   * @param other the run that is laid over it
   * @param at the phase at which they are brought together, empty for the start
   * @param planAt the phase at which the plan's primary drying is taken to begin
   */
  record Compared(
      List<OtherRuns.Choice> others,
      List<String> phases,
      Optional<OtherRun> other,
      String at,
      String planAt) {}

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
