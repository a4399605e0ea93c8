package org.firnline.app.solve;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.PressureSample;
import org.firnline.drying.leak.LeakEvaluation;
import org.firnline.drying.leak.LeakFinding;

/** Leak and outgassing of an isolated chamber. */
final class LeakCase implements CaseKind {

  private static final double PA_M3_PER_MBAR_L = 0.1;

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    LeakFinding finding =
        new LeakEvaluation().evaluate(samples(inputs), inputs.number("volume"), "the case");
    return finding.fold(LeakCase::steady, LeakCase::both, LeakCase::cannotTell);
  }

  private static List<PressureSample> samples(CaseInputs inputs) {
    List<Double> times = inputs.numbers("times_s");
    List<Double> pressures = inputs.numbers("pressure_Pa");
    if (times.size() != pressures.size()) {
      throw new CaseRefusal(
          "'times_s' and 'pressure_Pa' differ in length", "give one pressure for each time");
    }
    List<PressureSample> samples = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      samples.add(new PressureSample(times.get(i), pressures.get(i)));
    }
    return samples;
  }

  private static CaseAnswer steady(LeakFinding.Steady found) {
    return leak(true, found.leak().best()).put("outgas_Pa", 0.0).put("p0_Pa", found.start().best());
  }

  private static CaseAnswer both(LeakFinding.LeakAndOutgassing found) {
    return leak(true, found.leak().best())
        .put("outgas_Pa", found.outgassing().best())
        .put("tau_s", found.fading().best())
        .put("p0_Pa", found.start().best());
  }

  private static CaseAnswer cannotTell(LeakFinding.CannotTell found) {
    return leak(false, found.greatestLeak()).put("reason", found.reason()).undefined("outgas_Pa");
  }

  private static CaseAnswer leak(boolean separable, double leak) {
    return new CaseAnswer()
        .put("separable", separable)
        .put("leak_Pa_m3_per_s", leak)
        .put("leak_mbar_L_per_s", leak / PA_M3_PER_MBAR_L);
  }
}
