package org.firnline.app.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.sampling.LoadSampling;
import org.firnline.drying.sampling.SampledRun;
import org.firnline.drying.sampling.SampledRuns;
import org.firnline.drying.sampling.Spread;
import org.firnline.drying.sampling.Variation;
import org.firnline.evidence.Band;

/** A load whose vessels differ and about which little is known, sampled on two levels. */
final class MonteCarloCase implements CaseKind {

  /** A power of two, large enough for a hundredth of the spread of a quantile. */
  private static final int RUNS = 4096;

  private static final long SEED = 20261125;

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    Variation variation = new Variation(spread(inputs, "run_sd_"), spread(inputs, "vessel_sd_"));
    SampledRuns runs =
        new LoadSampling(variation, RUNS, SEED)
            .run(load(inputs), CoupledCase.shelf(inputs), inputs.number("pressure"));
    CaseAnswer answer = new CaseAnswer();
    band(answer, "last_finish", "s", runs, SampledRun::last);
    band(answer, "median_finish", "s", runs, SampledRun::median);
    band(answer, "first_finish", "s", runs, SampledRun::first);
    band(answer, "warmest", "K", runs, SampledRun::warmest);
    band(answer, "finish_of_95pct", "s", runs, SampledRun::ninetyFivePercent);
    inputs
        .optional("limit")
        .ifPresent(
            limit ->
                answer.put("probability_warmest_over_limit", runs.probabilityWarmestOver(limit)));
    return answer;
  }

  private static Spread spread(CaseInputs inputs, String level) {
    return new Spread(
        inputs.number(level + "kv", 0),
        inputs.number(level + "rp", 0),
        inputs.number(level + "fill", 0));
  }

  private static DryingLoad load(CaseInputs inputs) {
    DryingVessel vessel = ProductInputs.vessel(inputs);
    HeatSource heat = ProductInputs.heat(inputs);
    List<VesselGroup> groups = new ArrayList<>();
    for (List<Double> position : inputs.rows("positions_count_factor", 2)) {
      groups.add(new VesselGroup(position.get(0), vessel, heat.times(position.get(1))));
    }
    return new DryingLoad(groups);
  }

  private static void band(
      CaseAnswer answer,
      String name,
      String unit,
      SampledRuns runs,
      ToDoubleFunction<SampledRun> figure) {
    Band band = runs.band(figure);
    answer
        .put(name + "_q05_" + unit, band.low())
        .put(name + "_q50_" + unit, band.best())
        .put(name + "_q95_" + unit, band.high());
  }
}
