package org.firnline.review;

import java.util.List;
import java.util.OptionalDouble;
import org.firnline.logs.Log;

/** Says what happened in a run, from its log alone or with what is known beside it. Stateless. */
public final class Reviewer {

  /**
   * Reviews a run.
   *
   * @param log the run's log
   * @param context what is known beside it
   */
  public Review review(Log log, ReviewContext context) {
    return new Review(List.of(), List.of(), List.of(), List.of(), OptionalDouble.empty(), "");
  }
}
