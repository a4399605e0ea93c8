package org.firnline.app.care;

import java.util.List;
import java.util.Optional;

/**
 * The Care page, every text ready to read.
 *
 * @param dryers in the order people list them
 * @param shares hours and runs by group
 */
record CareView(List<Dryer> dryers, List<Share> shares) {

  /**
   * One dryer.
   *
   * @param name its name
   * @param state {@code watch} if a figure changed for the worse or something is due, else {@code
   *     pass}
   * @param summary one sentence
   * @param causes where to look first
   * @param trends one for each figure with enough runs
   * @param due what is to be done
   * @param hours running hours known
   */
  record Dryer(
      String name,
      String state,
      String summary,
      List<String> causes,
      List<Trend> trends,
      List<Due> due,
      String hours) {}

  /**
   * One figure.
   *
   * @param name what it is
   * @param standing where it stands, in a sentence
   * @param change what changed, if anything did
   * @param worse whether for the worse
   * @param picture its course
   */
  record Trend(
      String name, String standing, Optional<String> change, boolean worse, TrendPicture picture) {}

  /** Something to be done. */
  record Due(String state, String word, String name, String when) {}

  /** One group's share. */
  record Share(String group, int runs, String hours, String share) {}
}
