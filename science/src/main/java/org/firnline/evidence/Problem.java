package org.firnline.evidence;

/**
 * Something wrong with what a person gave, in the four parts that let them mend it.
 *
 * @param code stable name of the kind of problem, for programs and tests
 * @param what what was given, in the person's words and with its unit
 * @param where file, line, column, field or set
 * @param rule the limit or rule it breaks
 * @param advice what would be right
 */
public record Problem(String code, String what, String where, String rule, String advice) {

  /** One sentence for a terminal: where, what, rule, advice. */
  public String sentence() {
    return where + ": " + what + ": " + rule + "; " + advice;
  }

  /** The same problem at another place, for callers who know the file and line. */
  public Problem at(String place) {
    return new Problem(code, what, place, rule, advice);
  }
}
