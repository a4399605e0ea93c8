package org.firnline.logs;

import java.util.Objects;

/**
 * Something wrong with a file.
 *
 * @param what what is wrong, in words
 * @param line line of the file, from 1; 0 if it concerns the whole file
 * @param advice what to do about it
 */
public record ReadingProblem(String what, long line, String advice) {
  public ReadingProblem {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(advice, "advice");
  }
}
