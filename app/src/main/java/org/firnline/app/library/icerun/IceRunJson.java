package org.firnline.app.library.icerun;

import java.util.List;
import org.firnline.evidence.Problem;
import org.firnline.learning.icerun.IceRunAnswer;
import org.firnline.learning.icerun.PositionHeatTransfer;
import org.firnline.learning.icerun.PressureLaw;
import org.firnline.learning.uncertainty.Budget;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What ice runs tell, for programs. */
public final class IceRunJson {
  private static final double COVERAGE = 0.95;

  private IceRunJson() {}

  /** The whole answer. */
  public static ObjectNode of(IceRunFindings findings) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode runs = json.putArray("iceRuns");
    findings.answers().forEach(answer -> run(runs.addObject(), answer));
    ArrayNode laws = json.putArray("pressureLaws");
    findings.laws().forEach((position, law) -> law(laws.addObject(), position, law));
    return json;
  }

  /** What is wrong with a sheet. */
  public static ObjectNode problems(List<Problem> problems) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    problems(json.putArray("problems"), problems);
    return json;
  }

  private static void run(ObjectNode json, IceRunAnswer answer) {
    json.put("name", answer.run().name());
    json.put("vessel", answer.run().vessel());
    json.put("pressure_Pa", answer.run().pressure().best());
    json.put("drive_K", answer.run().drive());
    ArrayNode positions = json.putArray("positions");
    for (PositionHeatTransfer position : answer.positions()) {
      Budget budget = position.budget();
      ObjectNode entry = positions.addObject();
      entry.put("position", position.position()).put("vessels", position.vessels().size());
      entry.put("heatTransfer_W_per_m2_K", budget.value());
      entry.put("uncertainty_W_per_m2_K", budget.uncertainty());
      entry.put("expanded95_W_per_m2_K", budget.expanded(COVERAGE));
      if (Double.isFinite(budget.freedom())) {
        entry.put("degreesOfFreedom", budget.freedom());
      }
      if (!Double.isNaN(position.betweenVessels())) {
        entry.put("betweenVessels_fraction", position.betweenVessels());
      }
      ObjectNode parts = entry.putObject("uncertaintyFrom_W_per_m2_K");
      budget.parts().forEach(part -> parts.put(part.input().name(), Math.abs(part.change())));
    }
    problems(json.putArray("warnings"), answer.warnings());
  }

  private static void law(ObjectNode json, String position, PressureLaw law) {
    json.put("position", position);
    json.put("form", law.form().label());
    json.put("contact_W_per_m2_K", law.heatTransfer().contact());
    json.put("gas_W_per_m2_K_Pa", law.heatTransfer().gas());
    json.put("leveling_per_Pa", law.heatTransfer().leveling());
    ArrayNode deviations = json.putArray("standardDeviations");
    law.deviations().forEach(deviations::add);
    json.put("chiSquare", law.chiSquare());
    json.put("lowestPressure_Pa", law.lowest());
    json.put("highestPressure_Pa", law.highest());
  }

  private static void problems(ArrayNode json, List<Problem> problems) {
    for (Problem problem : problems) {
      ObjectNode entry = json.addObject();
      entry.put("code", problem.code()).put("what", problem.what()).put("where", problem.where());
      entry.put("rule", problem.rule()).put("advice", problem.advice());
    }
  }
}
