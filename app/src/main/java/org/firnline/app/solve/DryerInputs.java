package org.firnline.app.solve;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.dryer.CollectorRate;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporDuct;
import org.firnline.drying.dryer.VaporLimit;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.matter.Water;

/** Builds the dryer's side from the inputs of a case; parts that are not given do not limit. */
final class DryerInputs {

  /** Temperature of the vapor in the duct unless a case says otherwise, K. */
  private static final double ROOM_VAPOR_K = 293.15;

  private DryerInputs() {}

  static VaporPath path(CaseInputs inputs) {
    double floor = inputs.optional("collector").map(VaporPath::floor).orElse(0.0);
    List<VaporLimit> limits = new ArrayList<>();
    if (inputs.has("duct_area") || inputs.has("diameter")) {
      limits.add(duct(inputs, inputs.number("discharge", 1), floor));
    }
    if (inputs.has("line_slope")) {
      limits.add(new MeasuredLine(inputs.number("line_slope"), inputs.number("line_p0", 0)));
    }
    if (inputs.has("collector_rate")) {
      limits.add(new CollectorRate(inputs.number("collector_rate")));
    }
    return new VaporPath(limits, floor);
  }

  static VaporDuct duct(CaseInputs inputs, double discharge, double behind_Pa) {
    double area =
        inputs
            .optional("duct_area")
            .orElseGet(() -> Math.PI / 4 * Math.pow(inputs.number("diameter"), 2));
    return new VaporDuct(
        area,
        discharge,
        inputs.number("gas_temperature", ROOM_VAPOR_K),
        inputs.number("gamma", Water.VAPOR_HEAT_CAPACITY_RATIO),
        behind_Pa);
  }
}
