package org.firnline.planning;

import java.util.List;

/**
 * The answer to a plan question.
 *
 * @param question what was asked
 * @param hold the settings answered for
 * @param recommended whether the settings were found here, not given by the person
 * @param prediction what they are expected to do
 * @param checks what was looked at, gravest first
 */
public record PlanAnswer(
    PlanQuestion question,
    Hold hold,
    boolean recommended,
    Prediction prediction,
    List<CheckLine> checks) {

  public PlanAnswer {
    checks = List.copyOf(checks);
  }

  /** The gravest verdict on the list. */
  public Verdict worst() {
    return checks.stream().map(CheckLine::verdict).max(Verdict::compareTo).orElse(Verdict.PASS);
  }
}
