package org.firnline.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.firnline.bench.VialCases.VialCaseInput;
import org.firnline.drying.primary.PrimaryDrying;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FullAnswerTest {
  /** Both sides claim more; a ratio between answers that differ would mean nothing. */
  private static final Percentage SAME = Percentage.withPercentage(1e-9);

  private final PrimaryDrying drying = new PrimaryDrying();
  private final MarchInDepth march = new MarchInDepth(FullAnswer.TOLERANCE);

  static List<VialCaseInput> vials() {
    return VialCases.all();
  }

  @ParameterizedTest
  @MethodSource("vials")
  void bothSidesGiveTheSameDryingTime(VialCaseInput vial) {
    double ours =
        drying.run(vial.vessel(), vial.supply(), vial.pressure_Pa()).dryingTime().orElseThrow();
    double theirs = march.dryingTime(vial.vessel(), vial.supply(), vial.pressure_Pa());
    assertThat(ours).isPositive().isFinite();
    assertThat(theirs).isCloseTo(ours, SAME);
  }
}
