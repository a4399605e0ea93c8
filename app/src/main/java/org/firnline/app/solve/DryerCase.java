package org.firnline.app.solve;

import java.util.List;
import org.firnline.drying.dryer.VaporDuct;
import org.firnline.drying.dryer.VaporPath;

/** What a dryer carries over a list of chamber pressures. */
final class DryerCase implements CaseKind {

  private static final double USUAL_DISCHARGE = 0.8;

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    List<Double> pressures = inputs.numbers("pressures_Pa");
    if (pressures.stream().anyMatch(pressure -> !(pressure > 0))) {
      throw new CaseRefusal("'pressures_Pa' holds one that is not positive", "leave it out");
    }
    VaporPath path = DryerInputs.path(inputs);
    CaseAnswer answer =
        new CaseAnswer()
            .put("capability_kg_per_s", pressures.stream().map(path::rate).toList())
            .put("collector_floor_Pa", path.floor());
    if (inputs.has("duct_area") || inputs.has("diameter")) {
      VaporDuct ideal = DryerInputs.duct(inputs, 1, path.floor());
      VaporDuct usual = DryerInputs.duct(inputs, USUAL_DISCHARGE, path.floor());
      answer
          .put("ideal_kg_per_s", pressures.stream().map(ideal::rate).toList())
          .put("cd08_kg_per_s", pressures.stream().map(usual::rate).toList());
    }
    return answer;
  }
}
