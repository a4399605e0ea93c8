package org.firnline.app.solve;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.Outcome;
import org.firnline.drying.primary.PrimaryDrying;
import org.firnline.drying.primary.PrimaryDryingResult;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.drying.primary.Slab;
import org.firnline.matter.WagnerEtAl2011Ice;

/** Primary drying of one vessel at constant settings. */
final class PrimaryCase implements CaseKind {

  /** From this coefficient on a case means perfect contact, W/(m2 K). */
  private static final double PERFECT_CONTACT = 1e9;

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    double pressure_Pa = inputs.number("pressure");
    DryingVessel vessel = ProductInputs.vessel(inputs);
    HeatSupply supply = ProductInputs.supply(inputs, pressure_Pa);
    PrimaryDryingResult result = new PrimaryDrying().run(vessel, supply, pressure_Pa);
    CaseAnswer answer =
        new CaseAnswer()
            .put("status", result.outcome().status())
            .put("ice_kg", result.iceMass())
            .put("frozen_depth_m", result.thickness());
    result
        .dryingTime()
        .ifPresentOrElse(
            time -> answer.put("drying_time_s", time), () -> answer.undefined("drying_time_s"));
    outcome(answer, result.outcome());
    result.course().ifPresent(course -> course(answer, course));
    closedForm(answer, inputs, vessel, supply);
    return answer;
  }

  private static void outcome(CaseAnswer answer, Outcome outcome) {
    if (outcome instanceof Outcome.Dries dries) {
      answer.put("half_ice_time_s", dries.halfIceTime());
    } else if (outcome instanceof Outcome.NothingSublimes idle) {
      answer.put("product_temperature_K", idle.productTemperature());
    } else if (outcome instanceof Outcome.Stalls stalls) {
      answer.put("event_depth_m", stalls.depth()).put("stall_depth_m", stalls.depth());
    } else if (outcome instanceof Outcome.Melts melts) {
      answer.put("event_depth_m", melts.depth()).put("event_time_s", melts.time());
    }
  }

  private static void course(CaseAnswer answer, PrimaryDryingResult.Course course) {
    answer
        .put("max_bottom_K", course.warmestPoint())
        .put("max_front_K", course.warmestFront())
        .put("peak_rate_kg_per_s", course.peakRate())
        .put("start_front_K", course.start().frontTemperature())
        .put("start_bottom_K", course.start().bottomTemperature())
        .put("start_rate_kg_per_s", course.start().rate())
        .put("end_front_K", course.end().frontTemperature())
        .put("end_bottom_K", course.end().bottomTemperature())
        .put("end_rate_kg_per_s", course.end().rate());
  }

  /** The two exact answers of a slab: one rate for all depths, or a front at shelf temperature. */
  private static void closedForm(
      CaseAnswer answer, CaseInputs inputs, DryingVessel vessel, HeatSupply supply) {
    if (!(vessel.geometry() instanceof Slab slab) || supply.above().coefficient() > 0) {
      return;
    }
    double pressure_Pa = inputs.number("pressure");
    if (supply.coefficient() >= PERFECT_CONTACT && vessel.cake().leveling() == 0) {
      double depth = slab.thickness();
      double drive = new WagnerEtAl2011Ice().pressure(supply.temperature()) - pressure_Pa;
      double cake = vessel.cake().initial() * depth + vessel.cake().growth() * depth * depth / 2;
      double mouth = vessel.mouthResistance() * slab.productArea() * depth;
      double icePerVolume = slab.iceMass() / (depth * slab.productArea());
      answer.put("closed_form_time_s", icePerVolume * (cake + mouth) / drive);
    } else if (vessel.cake().growth() == 0) {
      double rate = new QuasiSteadyFront().at(vessel, supply, pressure_Pa, 0).rate();
      answer.put("closed_form_time_s", slab.iceMass() / rate);
    }
  }
}
