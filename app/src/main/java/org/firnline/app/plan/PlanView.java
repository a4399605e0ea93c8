package org.firnline.app.plan;

import java.util.List;
import java.util.Optional;

/**
 * The plan page, every text ready to read.
 *
 * @param title the plan's title as typed
 * @param savedId number of the stored plan it was opened from, if any
 * @param few groups of questions that everybody answers
 * @param more the rest
 * @param problems what is wrong outside any field
 * @param usable whether what was typed makes a plan
 * @param answer pictures, and checks; empty when something typed cannot be used or the load is not
 *     one kind of vial on shelves
 */
record PlanView(
    String title,
    Optional<Long> savedId,
    List<GroupView> few,
    List<GroupView> more,
    List<String> problems,
    boolean usable,
    Optional<AnswerView> answer) {

  /** A titled group of fields. */
  record GroupView(String title, List<FieldView> fields) {}

  /**
   * One field.
   *
   * @param id usable in markup
   * @param path its name in the form and the plan file
   * @param value as typed
   * @param placeholder the default in use when nothing is typed
   * @param origin where that default comes from, empty when none
   * @param problem what is wrong with what was typed
   * @param options values to choose from; empty for free text
   */
  record FieldView(
      String id,
      String path,
      String label,
      String value,
      String placeholder,
      String origin,
      Optional<String> problem,
      List<String> options,
      String width) {}

  /**
   * The answer.
   *
   * @param headline "Primary drying is done Thu 09:40 to 13:20"
   * @param comeBack when to come back, or why there is no finish
   * @param hold the settings in words
   * @param worst state of the gravest check
   * @param map what the window map draws, JSON
   * @param run what the predicted run draws, JSON
   */
  record AnswerView(
      String headline,
      String comeBack,
      String hold,
      String worst,
      String map,
      String mapSummary,
      String run,
      String runSummary,
      List<PointRow> points,
      List<CheckRow> checks,
      List<MatterRow> matters) {}

  /** A line of the check list. */
  record CheckRow(String state, String word, String subject, String text) {}

  /** What the width of the finish band comes from. */
  record MatterRow(String name, String share, String measurement) {}

  /** A row of the table under the predicted run. */
  record PointRow(String time, String product, String between, String dried) {}
}
