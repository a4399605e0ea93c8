package org.firnline.app.library.icerun;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.firnline.learning.icerun.IceRunAnswer;
import org.firnline.learning.icerun.PositionHeatTransfer;
import org.firnline.learning.icerun.PressureLaw;
import org.firnline.learning.icerun.PressureLawFit;
import org.firnline.learning.icerun.PressurePoint;

/**
 * What one or more ice runs tell together.
 *
 * @param answers each run's answer
 * @param laws K_v(P) of each position class with three pressures or more
 */
public record IceRunFindings(List<IceRunAnswer> answers, Map<String, PressureLaw> laws) {

  public IceRunFindings {
    answers = List.copyOf(answers);
  }

  /** Looks for K_v(P) class by class. */
  public static IceRunFindings of(List<IceRunAnswer> answers) {
    Map<String, List<PressurePoint>> points = new LinkedHashMap<>();
    for (IceRunAnswer answer : answers) {
      for (PositionHeatTransfer position : answer.positions()) {
        if (position.budget().uncertainty() > 0) {
          points
              .computeIfAbsent(position.position(), any -> new ArrayList<>())
              .add(
                  new PressurePoint(
                      answer.run().pressure().best(), position.estimate(answer.run().name())));
        }
      }
    }
    Map<String, PressureLaw> laws = new LinkedHashMap<>();
    points.forEach(
        (position, at) -> PressureLawFit.through(at).ifPresent(law -> laws.put(position, law)));
    return new IceRunFindings(answers, laws);
  }
}
