package org.firnline.app.solve;

import java.util.List;
import java.util.Locale;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ScheduledRun;
import org.firnline.drying.recipe.ShelfStep;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.recipe.Track;

/** One vessel under shelf steps and pressure points, without and with the heat it stores. */
final class RecipeCase implements CaseKind {

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    DryingVessel vessel = ProductInputs.vessel(inputs);
    HeatSource heat = ProductInputs.heat(inputs);
    Schedule schedule = schedule(inputs);
    CaseAnswer answer = new CaseAnswer();
    put(answer, "quasi_steady", ScheduledDrying.quasiSteady(vessel, heat, schedule));
    if (inputs.has("heat_capacity_vessel") || inputs.has("heat_capacity_frozen")) {
      ThermalMass mass =
          new ThermalMass(
              inputs.number("heat_capacity_vessel", 0), inputs.number("heat_capacity_frozen", 0));
      double start = inputs.number("product_start", inputs.number("shelf_start"));
      put(answer, "transient", ScheduledDrying.withStoredHeat(vessel, heat, schedule, mass, start));
    }
    return answer;
  }

  private static Schedule schedule(CaseInputs inputs) {
    List<ShelfStep> steps =
        inputs.rows("shelf_steps_target_rate_hold", 3).stream()
            .map(step -> new ShelfStep(step.get(0), step.get(1), step.get(2)))
            .toList();
    List<Track.Point> pressures =
        inputs.rows("pressure_points", 2).stream()
            .map(point -> new Track.Point(point.get(0), point.get(1)))
            .toList();
    return Schedule.of(inputs.number("shelf_start"), steps, pressures);
  }

  private static void put(CaseAnswer answer, String form, ScheduledRun run) {
    boolean dries = run.ending() == ScheduledRun.Ending.DRIES;
    answer.put(form + "_status", dries ? "dries" : run.ending().name().toLowerCase(Locale.ROOT));
    if (dries) {
      answer.put(form + "_time_s", run.time());
    } else {
      answer.undefined(form + "_time_s").put(form + "_event_time_s", run.time());
    }
    answer
        .put(form + "_max_bottom_K", run.warmest().value())
        .put(form + "_peak_rate_kg_per_s", run.peakRate().value())
        .put(form + "_warmest_at_s", run.warmest().time());
  }
}
