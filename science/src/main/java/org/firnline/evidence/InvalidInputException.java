package org.firnline.evidence;

import java.util.List;

/** What a person gave cannot be used; carries every problem that was found, not the first only. */
public final class InvalidInputException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public InvalidInputException(List<Problem> problems) {
    super(String.join("; ", problems.stream().map(Problem::sentence).toList()));
    this.problems = List.copyOf(problems);
  }

  public InvalidInputException(Problem problem) {
    this(List.of(problem));
  }

  /** At least one problem, in the order of the input. */
  public List<Problem> problems() {
    return problems;
  }
}
