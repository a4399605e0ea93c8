package org.firnline.app.solve;

import java.util.List;
import org.firnline.drying.pressurerise.PressureRise;
import org.firnline.matter.WagnerEtAl2011Ice;

/** Pressure after the valve to the collector shuts, the front keeping its temperature. */
final class PressureRiseCase implements CaseKind {

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    double front = new WagnerEtAl2011Ice().pressure(inputs.number("front"));
    double resistance =
        inputs.number("rp") / inputs.number("area_product") + inputs.number("mouth", 0);
    double rate =
        PressureRise.rate(
            inputs.number("count") / resistance,
            inputs.number("gas_temperature"),
            inputs.number("volume"));
    PressureRise rise =
        new PressureRise(front, inputs.number("pressure"), rate, inputs.number("leak", 0));
    List<Double> pressures = inputs.numbers("seconds").stream().map(rise::at).toList();
    return new CaseAnswer()
        .put("k_per_s", rate)
        .put("front_pressure_Pa", front)
        .put("pressure_Pa", pressures);
  }
}
