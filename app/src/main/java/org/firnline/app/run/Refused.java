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
 */
record Refused(
    Optional<String> limit, String limitProblem, Map<String, String> answers, Set<String> choices) {

  static Refused nothing() {
    return new Refused(Optional.empty(), "", Map.of(), Set.of());
  }

  static Refused limit(String typed, String problem) {
    return new Refused(Optional.of(typed), problem, Map.of(), Set.of());
  }

  static Refused answers(Map<String, String> typed, Set<String> choices) {
    return new Refused(Optional.empty(), "", typed, choices);
  }
}
