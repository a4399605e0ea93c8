package org.firnline.app.library.icerun;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.learning.icerun.IceRun;

/**
 * A sheet as read.
 *
 * @param run the ice run; empty if something needed is missing or wrong
 * @param dryer the dryer it names, or nothing
 * @param problems what is missing or wrong, each with its line
 * @param assumed what the sheet did not say and was filled in, in sentences
 */
public record IceRunReading(
    Optional<IceRun> run, String dryer, List<Problem> problems, List<String> assumed) {

  public IceRunReading {
    problems = List.copyOf(problems);
    assumed = List.copyOf(assumed);
  }
}
