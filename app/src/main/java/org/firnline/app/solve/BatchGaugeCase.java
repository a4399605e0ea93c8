package org.firnline.app.solve;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.load.BatchGauge;
import org.firnline.drying.load.CoupledDrying;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.LoadRun;
import org.firnline.drying.load.LoadSettings;
import org.firnline.drying.load.PressureControl;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.HeatSource;
import org.firnline.lab.CakeResistance;

/** Gauge ratio of a load in classes of vessels that run dry one after the other. */
final class BatchGaugeCase implements CaseKind {

  /**
   * Excess of the gauge in pure vapor unless a case says otherwise: 1.6 times the true pressure.
   */
  private static final double USUAL_EXCESS = 0.6;

  private static final double TWENTY_HOURS_S = 72_000;

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    double pressure_Pa = inputs.number("pressure");
    LoadRun run =
        CoupledDrying.run(
            new DryingLoad(classes(inputs)),
            new LoadSettings(
                CoupledCase.shelf(inputs),
                new PressureControl.Held(pressure_Pa),
                DryerInputs.path(inputs)),
            TWENTY_HOURS_S);
    BatchGauge gauge =
        new BatchGauge(
            inputs.number("gauge_excess", USUAL_EXCESS),
            inputs.number("pumping_speed"),
            inputs.number("gas_temperature"));
    List<BatchGauge.Ratio> curve = gauge.along(run);
    CaseAnswer answer =
        new CaseAnswer()
            .put("end_times_s", run.groupEnds())
            .put("first_end_s", run.groupEnds().stream().min(Double::compare).orElse(Double.NaN))
            .put("last_end_s", run.groupEnds().stream().max(Double::compare).orElse(Double.NaN));
    if (!curve.isEmpty()) {
      answer.put("ratio_start", curve.get(0).value());
    }
    curve.stream()
        .filter(ratio -> ratio.time() == TWENTY_HOURS_S)
        .findFirst()
        .ifPresent(ratio -> answer.put("ratio_at_20h", ratio.value()));
    BatchGauge.marks(curve)
        .ifPresent(
            marks ->
                answer
                    .put("onset_s", marks.onset())
                    .put("midpoint_s", marks.midpoint())
                    .put("end_s", marks.end()));
    return answer;
  }

  private static List<VesselGroup> classes(CaseInputs inputs) {
    List<Double> heatFactors = inputs.numbers("kv_factors");
    List<Double> cakeFactors = inputs.numbers("rp_factors");
    if (heatFactors.size() != cakeFactors.size()) {
      throw new CaseRefusal(
          "'kv_factors' and 'rp_factors' differ in length", "give one of each per class");
    }
    FrontGeometry geometry = ProductInputs.geometry(inputs);
    HeatSource heat = ProductInputs.heat(inputs);
    CakeResistance cake = ProductInputs.cake(inputs);
    List<VesselGroup> groups = new ArrayList<>();
    for (int i = 0; i < heatFactors.size(); i++) {
      groups.add(
          new VesselGroup(
              inputs.number("per_class"),
              new DryingVessel(geometry, cake.times(cakeFactors.get(i)), inputs.number("mouth", 0)),
              heat.times(heatFactors.get(i))));
    }
    return groups;
  }
}
