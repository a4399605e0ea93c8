package org.firnline.app.solve;

import java.util.Optional;
import org.firnline.drying.load.DryingLoad;
import org.firnline.lab.Range;
import org.firnline.planning.point.BestPoint;
import org.firnline.planning.point.BestPointSearch;
import org.firnline.planning.point.PointLimits;

/** The settings that dry fastest at one moment, within the limits of product and dryer. */
final class BestPointCase implements CaseKind {

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    DryingLoad load = CoupledCase.load(inputs);
    PointLimits limits =
        new PointLimits(
            inputs.number("limit"),
            range(inputs, "shelf_range"),
            range(inputs, "pressure_range"),
            DryerInputs.path(inputs));
    Optional<BestPoint> best =
        new BestPointSearch(load, inputs.number("dried_share", 0), limits).find();
    CaseAnswer answer = new CaseAnswer().put("found", best.isPresent());
    best.ifPresent(
        point ->
            answer
                .put("pressure", point.pressure())
                .put("shelf", point.shelf())
                .put("rate", point.totalRate() / inputs.number("count"))
                .put("total_rate_kg_per_s", point.totalRate())
                .put("warmest_K", point.warmest()));
    return answer;
  }

  private static Range range(CaseInputs inputs, String key) {
    var ends = inputs.numbers(key);
    if (ends.size() != 2) {
      throw new CaseRefusal("'" + key + "' has " + ends.size() + " limits", "give two");
    }
    return new Range(ends.get(0), ends.get(1));
  }
}
