package org.firnline.app.planfile;

import org.firnline.evidence.Problem;

/**
 * Something wrong in a plan file.
 *
 * @param path the key it is about, such as {@code vessel.fill}; empty for the file as a whole
 * @param line line in the file, from 1; 0 where the key is missing
 * @param column column in the line, from 1; 0 where the key is missing
 * @param problem what is wrong and what would be right
 */
public record PlanProblem(String path, int line, int column, Problem problem) {

  /** One sentence for a terminal, starting with the place. */
  public String sentence() {
    return problem.sentence();
  }
}
