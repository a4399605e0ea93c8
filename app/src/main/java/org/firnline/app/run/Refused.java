package org.firnline.app.run;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What was typed on a run's page and cannot be used; it is shown again with its problem.
 *
 * @param limit the critical temperature as typed, if that was refused
 * @param limitProblem what is wrong with it
 * @param answers answers about the file as typed
 * @param choices names of the answers that cannot be used
 * @param note the note as typed, if that was refused
 * @param caption the caption of a file that was refused
 * @param paperProblem key of the text that says what is wrong with the note or file
 */
record Refused(
    Optional<String> limit,
    String limitProblem,
    Map<String, String> answers,
    Set<String> choices,
    Optional<Note> note,
    Optional<String> caption,
    String paperProblem) {

  /** A note as typed. */
  record Note(String text, String at) {}

  static Refused nothing() {
    return new Refused(
        Optional.empty(), "", Map.of(), Set.of(), Optional.empty(), Optional.empty(), "");
  }

  static Refused limit(String typed, String problem) {
    return new Refused(
        Optional.of(typed), problem, Map.of(), Set.of(), Optional.empty(), Optional.empty(), "");
  }

  static Refused answers(Map<String, String> typed, Set<String> choices) {
    return new Refused(
        Optional.empty(), "", typed, choices, Optional.empty(), Optional.empty(), "");
  }

  static Refused note(Note typed, String problem) {
    return new Refused(
        Optional.empty(), "", Map.of(), Set.of(), Optional.of(typed), Optional.empty(), problem);
  }

  static Refused file(String caption, String problem) {
    return new Refused(
        Optional.empty(), "", Map.of(), Set.of(), Optional.empty(), Optional.of(caption), problem);
  }
}
