package org.firnline.app.solve;

import java.util.List;
import org.firnline.drying.leak.LeakTest;

/** Leak and outgassing of an isolated chamber. */
final class LeakCase implements CaseKind {

  private static final double PA_M3_PER_MBAR_L = 0.1;

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    LeakTest test =
        LeakTest.of(
            array(inputs.numbers("times_s")),
            array(inputs.numbers("pressure_Pa")),
            inputs.number("volume"));
    return new CaseAnswer()
        .put("separable", test.separable())
        .put("leak_Pa_m3_per_s", test.leak())
        .put("leak_mbar_L_per_s", test.leak() / PA_M3_PER_MBAR_L)
        .put("outgas_Pa", test.separable() ? test.outgassing() : Double.NaN)
        .put("tau_s", test.time())
        .put("p0_Pa", test.start());
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
