package org.firnline.drying.icerun;

import java.util.List;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Problem;

/**
 * The heat transfer that an ice run tells.
 *
 * @param heatTransfer K_v on the outer bottom area at the run's chamber pressure, W/(m2 K)
 * @param meanDrive mean of shelf minus bottom, K
 * @param warnings what makes it less certain than its spread says
 */
public record IceRunResult(Estimate heatTransfer, double meanDrive, List<Problem> warnings) {

  public IceRunResult {
    warnings = List.copyOf(warnings);
  }
}
