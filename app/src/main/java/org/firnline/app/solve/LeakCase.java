package org.firnline.app.solve;

import java.util.List;
import java.util.stream.IntStream;
import org.firnline.drying.PressureSample;
import org.firnline.drying.leak.LeakEvaluation;
import org.firnline.drying.leak.LeakFinding;

/** Leak and outgassing of an isolated chamber. */
final class LeakCase implements CaseKind {

  private static final double PA_M3_PER_MBAR_L = 0.1;

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    List<Double> times = inputs.numbers("times_s");
    List<Double> pressures = inputs.numbers("pressure_Pa");
    if (times.size() != pressures.size()) {
      throw new IllegalArgumentException("a leak test needs one pressure for each time");
    }
    List<PressureSample> samples =
        IntStream.range(0, times.size())
            .mapToObj(i -> new PressureSample(times.get(i), pressures.get(i)))
            .toList();
    LeakFinding finding =
        new LeakEvaluation().evaluate(samples, inputs.number("volume"), "of the case");
    return finding.fold(
        steady -> answer(true, steady.leak().best()).put("p0_Pa", steady.start().best()),
        both ->
            answer(true, both.leak().best())
                .put("outgas_Pa", both.outgassing().best())
                .put("tau_s", both.fading().best())
                .put("p0_Pa", both.start().best()),
        cannot -> answer(false, cannot.greatestLeak()).put("p0_Pa", pressures.get(0)));
  }

  private static CaseAnswer answer(boolean separable, double leak) {
    return new CaseAnswer()
        .put("separable", separable)
        .put("leak_Pa_m3_per_s", leak)
        .put("leak_mbar_L_per_s", leak / PA_M3_PER_MBAR_L)
        .undefined("outgas_Pa")
        .undefined("tau_s");
  }
}
