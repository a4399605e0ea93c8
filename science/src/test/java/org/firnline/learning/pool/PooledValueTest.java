package org.firnline.learning.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PooledValueTest {

  private static List<PooledValue.Group> groups(double[] values, double[] errors) {
    List<PooledValue.Group> groups = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      groups.add(new PooledValue.Group("group " + i, values[i], errors[i]));
    }
    return groups;
  }

  /**
   * Thirteen vaccine trials, log relative risks and variances (Colditz et al., JAMA 271, 698
   * (1994), as used throughout the literature on pooling); DerSimonian and Laird: τ² = 0.3088, μ =
   * −0.7141, standard error 0.1787. All from memory.
   */
  @Test
  void meetsAPublishedWorkedExample() {
    double[] values = {
      -0.8893, -1.5854, -1.3481, -1.4416, -0.2175, -0.7861, -1.6209, 0.0120, -0.4694, -1.3713,
      -0.3394, 0.4459, -0.0173
    };
    double[] variances = {
      0.3256, 0.1946, 0.4154, 0.0200, 0.0512, 0.0069, 0.2230, 0.0040, 0.0564, 0.0730, 0.0124,
      0.5325, 0.0714
    };
    double[] errors = new double[variances.length];
    for (int i = 0; i < errors.length; i++) {
      errors[i] = Math.sqrt(variances[i]);
    }
    PooledValue pooled = PooledValue.of(groups(values, errors));
    assertThat(pooled.between() * pooled.between()).isCloseTo(0.3088, within(5e-4));
    assertThat(pooled.common()).isCloseTo(-0.7141, within(3e-4));
    assertThat(pooled.commonError()).isCloseTo(0.1787, within(2e-4));
    assertThat(pooled.errorOfNext()).isCloseTo(Math.sqrt(0.1787 * 0.1787 + 0.3088), within(1e-3));
  }

  /**
   * Eight schools, Gelman et al., Bayesian Data Analysis, section 5.5 (from memory): complete
   * pooling gives 7.7 ± 4.1, and the scatter is no larger than the errors explain.
   */
  @Test
  void poolsCompletelyWhereGroupsDoNotDiffer() {
    PooledValue pooled =
        PooledValue.of(
            groups(
                new double[] {28, 8, -3, 7, -1, 1, 18, 12},
                new double[] {15, 10, 16, 11, 9, 11, 10, 18}));
    assertThat(pooled.between()).isZero();
    assertThat(pooled.common()).isCloseTo(7.7, within(0.05));
    assertThat(pooled.commonError()).isCloseTo(4.1, within(0.05));
    assertThat(pooled.groups()).allMatch(drawn -> drawn.own() == 0);
  }

  @Nested
  class Shrinkage {

    private final List<PooledValue.Group> two = groups(new double[] {10, 20}, new double[] {1, 3});

    /** τ = 3: own share of the second is 9/(9 + 9) = ½, so it lies half way to the common value. */
    @Test
    void followsTheClosedForm() {
      PooledValue pooled = PooledValue.with(two, 3);
      double common = (10 / 10.0 + 20 / 18.0) / (1 / 10.0 + 1 / 18.0);
      assertThat(pooled.common()).isCloseTo(common, within(1e-12));
      assertThat(pooled.groups().get(1).own()).isEqualTo(0.5);
      assertThat(pooled.groups().get(1).value()).isCloseTo((20 + common) / 2, within(1e-12));
      assertThat(pooled.groups().get(1).error()).isLessThan(3);
    }

    @Test
    void vanishesWhenGroupsDifferWidely() {
      PooledValue pooled = PooledValue.with(two, 1e6);
      assertThat(pooled.groups().get(1).value()).isCloseTo(20, within(1e-6));
      assertThat(pooled.groups().get(1).error()).isCloseTo(3, within(1e-6));
    }
  }

  @Test
  void aSingleGroupStandsForItself() {
    PooledValue pooled = PooledValue.of(groups(new double[] {5}, new double[] {2}));
    assertThat(pooled.common()).isEqualTo(5);
    assertThat(pooled.between()).isZero();
  }

  @Test
  void refusesNothingAndNonsense() {
    assertThatIllegalArgumentException().isThrownBy(() -> PooledValue.of(List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PooledValue.Group("run 4", 1, 0))
        .withMessageContaining("run 4");
  }

  /** Errors +10 %, −10 %, +20 %: running means 10, 0, 6.67 %; bands held 1, 1 of 2, 1 of 3. */
  @Test
  void aTrackRecordIsKeptRunByRun() {
    TrackRecord record =
        new TrackRecord(
            List.of(
                new TrackRecord.Entry("a", 100, 90, 115, 110),
                new TrackRecord.Entry("b", 100, 95, 105, 90),
                new TrackRecord.Entry("c", 100, 90, 110, 120)));
    List<TrackRecord.Running> running = record.running();
    assertThat(running.get(2).meanError()).isCloseTo(0.2 / 3, within(1e-12));
    assertThat(running.get(2).typicalError())
        .isCloseTo(Math.sqrt((0.01 + 0.01 + 0.04) / 3), within(1e-12));
    assertThat(running)
        .extracting(TrackRecord.Running::coverage)
        .containsExactly(1.0, 0.5, 1.0 / 3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TrackRecord.Entry("d", 100, 110, 120, 100))
        .withMessageContaining("d:");
  }
}
