package org.firnline.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.ToDoubleFunction;
import org.firnline.bench.WindowTrajectory.Case;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.PrimaryDrying;
import org.junit.jupiter.api.Test;

/** A ratio of speeds means something only between answers of the same quality. */
class WindowTrajectoryTest {
  /** What the window map promises for its drying times, relative. */
  private static final double PROMISED = 1e-6;

  private final PrimaryDrying reference = new PrimaryDrying();

  @Test
  void firnlineKeepsThePromiseOfTheWindowMap() {
    assertThat(worstError(this::ours)).isPositive().isLessThan(PROMISED);
  }

  @Test
  void theBaselineIsAsExact() {
    assertThat(worstError(baseline(WindowTrajectory.TOLERANCE))).isLessThan(worstError(this::ours));
  }

  @Test
  void aLooserBaselineWouldBeLessExact() {
    assertThat(worstError(baseline(10 * WindowTrajectory.TOLERANCE)))
        .isGreaterThan(worstError(this::ours));
  }

  private double worstError(ToDoubleFunction<Case> dryingTime) {
    return WindowTrajectory.cases().stream()
        .mapToDouble(vial -> Math.abs(dryingTime.applyAsDouble(vial) / exact(vial) - 1))
        .max()
        .orElseThrow();
  }

  private double ours(Case vial) {
    return FastPrimaryDrying.run(vial.vessel(), vial.supply(), vial.pressure_Pa()).time();
  }

  private static ToDoubleFunction<Case> baseline(double tolerance) {
    MarchInDepth march = new MarchInDepth(tolerance);
    return vial -> march.dryingTime(vial.vessel(), vial.supply(), vial.pressure_Pa());
  }

  private double exact(Case vial) {
    return reference
        .run(vial.vessel(), vial.supply(), vial.pressure_Pa())
        .dryingTime()
        .orElseThrow();
  }
}
