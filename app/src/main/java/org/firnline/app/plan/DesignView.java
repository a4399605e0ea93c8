package org.firnline.app.plan;

import java.util.List;
import java.util.Optional;

/**
 * The recipe with what stands beside it, every text ready to read.
 *
 * @param headline when it is dry
 * @param comeBack when to come back
 * @param startBy when to start so that somebody is there at the end
 * @param leads whether this part carries the headline, because the load has no window map
 * @param state of the whole
 * @param verdict why no setting keeps the limits, if none does
 * @param penalty how close the recipe comes to the ideal
 * @param path JSON of the primary steps, for the window map
 */
record DesignView(
    String headline,
    String comeBack,
    String startBy,
    boolean leads,
    String state,
    Optional<String> verdict,
    String penalty,
    List<Alternative> alternatives,
    List<Item> items,
    List<Caution> cautions,
    Card card,
    String path) {

  /** One way to dry the load. */
  record Alternative(
      String name,
      String time,
      String risk,
      String riskState,
      String pressureRisk,
      String settings,
      String source,
      boolean chosen) {}

  /** What sharing means for one item. */
  record Item(String owner, String product, String time, String alone, String risk, String note) {}

  /** A caution. */
  record Caution(String state, String word, String text) {}

  /** What is typed into the dryer, on one page. */
  record Card(
      String title,
      List<String> load,
      String dryer,
      List<Step> steps,
      String when,
      String cautions) {}

  /** A line to type. */
  record Step(int number, String phase, String shelf, String pressure, String ramp, String hold) {}
}
