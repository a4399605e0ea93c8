package org.firnline.app.ask;

import java.util.List;
import java.util.Optional;

/**
 * A question's page, every text ready to read.
 *
 * @param key the question
 * @param topics every question, for the row of links
 * @param fields what it asks for
 * @param answer its answer; empty while something typed cannot be used
 * @param refusal why the values do not go together, if they do not
 */
record AskView(
    String key,
    String title,
    String lead,
    List<Link> topics,
    List<Field> fields,
    Optional<Answer> answer,
    Optional<String> refusal) {

  /** A question in the row of links. */
  record Link(String key, String name, boolean current) {}

  /**
   * One value.
   *
   * @param typed what was typed; empty when the standard is used
   * @param standard what is used when nothing is typed
   * @param asked whether the chosen vessel has it
   */
  record Field(
      String key,
      String label,
      String typed,
      String standard,
      String origin,
      Optional<String> problem,
      List<Choice> choices,
      boolean asked) {}

  /** Something that may be chosen. */
  record Choice(String key, String name, boolean chosen) {}

  /**
   * The answer.
   *
   * @param picture SVG markup made here
   * @param caution the usual caution at this moment
   */
  record Answer(
      String state,
      String word,
      List<Figure> figures,
      String advice,
      String picture,
      String pictureText,
      String caution) {}

  /** A number of the answer. */
  record Figure(String name, String value, String between) {}
}
