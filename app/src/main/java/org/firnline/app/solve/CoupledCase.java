package org.firnline.app.solve;

import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.load.CoupledDrying;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.LoadOutcome;
import org.firnline.drying.load.LoadRun;
import org.firnline.drying.load.LoadSettings;
import org.firnline.drying.load.LoadState;
import org.firnline.drying.load.PressureControl;
import org.firnline.drying.load.PressureRoot;
import org.firnline.drying.load.VesselGroup;

/** A load and a dryer that share one chamber pressure. */
final class CoupledCase implements CaseKind {

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    VaporPath path = DryerInputs.path(inputs);
    LoadRun run =
        CoupledDrying.run(load(inputs), new LoadSettings(shelf(inputs), control(inputs), path));
    CaseAnswer answer =
        new CaseAnswer()
            .put("status", run.outcome().status())
            .put("total_ice_kg", run.ice())
            .put("collector_floor_Pa", path.floor())
            .put(
                "roots_at_start_Pa",
                run.rootsAtStart().stream().map(PressureRoot::pressure).toList());
    time(answer, run.outcome());
    run.highestPressure().ifPresent(pressure -> answer.put("max_pressure_Pa", pressure));
    run.warmest().ifPresent(warmest -> answer.put("max_bottom_K", warmest));
    run.warning().ifPresent(warning -> answer.put("warning", warning));
    if (!run.course().isEmpty()) {
      ends(answer, run, path);
    }
    return answer;
  }

  static DryingLoad load(CaseInputs inputs) {
    return DryingLoad.of(
        new VesselGroup(
            inputs.number("count"), ProductInputs.vessel(inputs), ProductInputs.heat(inputs)));
  }

  static double shelf(CaseInputs inputs) {
    return ProductInputs.isShell(inputs) ? inputs.number("room") : inputs.number("shelf");
  }

  private static PressureControl control(CaseInputs inputs) {
    return inputs
        .optional("pressure")
        .<PressureControl>map(PressureControl.Held::new)
        .orElseGet(PressureControl.Floating::new);
  }

  private static void time(CaseAnswer answer, LoadOutcome outcome) {
    if (outcome instanceof LoadOutcome.Dries dries) {
      answer.put("drying_time_s", dries.time());
    } else if (outcome instanceof LoadOutcome.Melts melts) {
      answer.undefined("drying_time_s").put("event_time_s", melts.time());
    } else if (outcome instanceof LoadOutcome.Overloaded overloaded) {
      answer.undefined("drying_time_s").put("event_time_s", overloaded.time());
    } else if (outcome instanceof LoadOutcome.NothingSublimes) {
      answer.put("drying_time_s", Double.POSITIVE_INFINITY);
    } else {
      answer.undefined("drying_time_s");
    }
  }

  private static void ends(CaseAnswer answer, LoadRun run, VaporPath path) {
    LoadState first = run.course().get(0);
    LoadState last = run.course().get(run.course().size() - 1);
    answer
        .put("start_pressure_Pa", first.pressure())
        .put("end_pressure_Pa", last.pressure())
        .put("start_total_rate_kg_per_s", first.totalRate())
        .put("end_total_rate_kg_per_s", last.totalRate())
        .put("start_capability_kg_per_s", path.rate(first.pressure()));
  }
}
