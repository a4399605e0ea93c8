package org.firnline.learning.icerun;

import java.util.List;
import org.firnline.evidence.Problem;

/**
 * What a weighed ice run tells.
 *
 * @param run the run
 * @param positions one for each position class, in the order of the sheet
 * @param warnings what makes it less certain than its uncertainty says
 */
public record IceRunAnswer(
    IceRun run, List<PositionHeatTransfer> positions, List<Problem> warnings) {

  public IceRunAnswer {
    positions = List.copyOf(positions);
    warnings = List.copyOf(warnings);
  }
}
