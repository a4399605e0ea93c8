package org.firnline.app.solve;

import java.util.List;
import java.util.OptionalDouble;
import org.firnline.drying.recipe.Track;
import org.firnline.drying.secondary.Desorption;
import org.firnline.drying.secondary.SecondaryDrying;
import org.firnline.matter.solute.GordonTaylor1952;

/** Desorption at one shelf temperature or along a ramp and hold. */
final class SecondaryCase implements CaseKind {

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    Desorption desorption =
        new Desorption(inputs.number("k0"), inputs.number("Ea"), inputs.number("c_eq", 0));
    Track track = track(inputs);
    SecondaryDrying drying = new SecondaryDrying(desorption, inputs.number("c0"), track);
    CaseAnswer answer = new CaseAnswer();
    inputs.optional("target").ifPresent(target -> time(answer, drying.timeTo(target)));
    if (inputs.has("shelf")) {
      answer.put("rate_per_s", desorption.rate(inputs.number("shelf")));
    }
    double[] bends = track.bends();
    double end = bends[bends.length - 1];
    if (end > 0) {
      answer
          .put("moisture_after_ramp", drying.moisture(bends[1]))
          .put("final_moisture", drying.moisture(end))
          .put("program_end_s", end);
    }
    if (inputs.has("tg_solid")) {
      GordonTaylor1952 glass =
          new GordonTaylor1952(
              inputs.number("tg_solid"),
              inputs.number("gt_k"),
              inputs.number("tg_water", GordonTaylor1952.WATER_TRANSITION));
      SecondaryDrying.GlassMargin least = drying.leastMargin(glass, end);
      answer.put("least_margin_K", least.margin()).put("at_s", least.time());
    }
    return answer;
  }

  private static void time(CaseAnswer answer, OptionalDouble time) {
    answer.put("reachable", time.isPresent());
    answer.put("time_s", time.orElse(Double.POSITIVE_INFINITY));
  }

  private static Track track(CaseInputs inputs) {
    if (inputs.has("shelf")) {
      return Track.constant(inputs.number("shelf"));
    }
    double start = inputs.number("shelf_start");
    double hold = inputs.number("hold");
    double ramped = Math.abs(hold - start) / inputs.number("ramp");
    return Track.through(
        List.of(
            new Track.Point(0, start),
            new Track.Point(ramped, hold),
            new Track.Point(ramped + inputs.number("hold_time", 0), hold)));
  }
}
