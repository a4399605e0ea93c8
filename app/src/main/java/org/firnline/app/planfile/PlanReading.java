package org.firnline.app.planfile;

import java.util.List;
import java.util.Optional;

/**
 * What became of a plan file.
 *
 * @param input the plan; empty when there is any problem
 * @param problems everything wrong with it, in the order of the file
 * @param assumptions every default that was filled in
 */
public record PlanReading(
    Optional<PlanInput> input, List<PlanProblem> problems, List<Assumption> assumptions) {

  public PlanReading {
    problems = List.copyOf(problems);
    assumptions = List.copyOf(assumptions);
    if (input.isEmpty() == problems.isEmpty()) {
      throw new IllegalArgumentException("a reading has either a plan or problems");
    }
  }
}
