package org.firnline.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ControlChartTest {

  private static final Instant START = Instant.parse("2024-11-04T08:00:00Z");

  /** NIST/SEMATECH e-Handbook 6.3.2.4, the worked example (data and answers from memory). */
  @Nested
  class MovingAverage {

    private final List<Double> data =
        List.of(
            52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3,
            47.8, 51.2, 52.6, 52.4, 53.6, 52.1);
    private final List<Double> printed =
        List.of(
            50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36,
            49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99);

    @Test
    void meetsThePrintedAverages() {
      List<Double> averages = Ewma.USUAL.averages(data, 50);
      for (int i = 0; i < printed.size(); i++) {
        assertThat(averages.get(i)).isCloseTo(printed.get(i), within(0.0051));
      }
    }

    /** Printed limits 52.5884 and 47.4115 with s = 2.0539. */
    @Test
    void meetsThePrintedLimits() {
      assertThat(50 + Ewma.USUAL.reach(2.0539)).isCloseTo(52.5884, within(2e-4));
      assertThat(50 - Ewma.USUAL.reach(2.0539)).isCloseTo(47.4115, within(2e-4));
    }
  }

  /** NIST/SEMATECH e-Handbook 6.3.2.3, the worked example (from memory): k 0.3175, h 4.1959. */
  @Nested
  class CumulativeSum {

    private final List<Double> data =
        List.of(
            324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225,
            324.600, 324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775,
            326.875, 328.350);

    @Test
    void signalsAtTheFourteenthGroup() {
      Cusum cusum = new Cusum(0.3175, 4.1959);
      List<Cusum.Sums> sums = cusum.sums(data, 325);
      int first = 0;
      while (sums.get(first).high() <= cusum.decision()) {
        first++;
      }
      assertThat(first + 1).isEqualTo(14);
      assertThat(sums.get(13).high()).isCloseTo(4.94, within(5e-3));
      assertThat(sums.get(3).low()).isCloseTo(0.34, within(0.01));
    }
  }

  private static List<CarePoint> points(CareFigure figure, double... values) {
    List<CarePoint> points = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      points.add(new CarePoint(figure, START.plus(Duration.ofDays(7L * i)), "run " + i, values[i]));
    }
    return points;
  }

  /** Values that alternate about a mean, with a rise from a known run on. */
  private static double[] rising(int runs, int from, double perRun) {
    double[] values = new double[runs];
    for (int i = 0; i < runs; i++) {
      double[] scatter = {0, 12, -8, 5, -13, 9, -4};
      values[i] = 900 + scatter[i % 7] + perRun * Math.max(0, i - from + 1);
    }
    return values;
  }

  @Nested
  class AChangeIsFound {

    @Test
    void withItsDateWithinThreeRuns() {
      ControlChart chart =
          ControlChart.of(CareFigure.PUMP_DOWN, points(CareFigure.PUMP_DOWN, rising(60, 40, 15)))
              .orElseThrow();
      ControlChart.Change change = chart.change().orElseThrow();
      long since = Duration.between(START, change.since()).toDays() / 7;
      assertThat(since).isBetween(37L, 43L);
      assertThat(change.seen()).isAfterOrEqualTo(change.since());
      assertThat(change.upward()).isTrue();
      assertThat(change.worse()).isTrue();
      assertThat(change.size()).isPositive();
      assertThat(chart.isOutNow()).isTrue();
    }

    @Test
    void andAQuietDryerHasNone() {
      ControlChart chart =
          ControlChart.of(CareFigure.PUMP_DOWN, points(CareFigure.PUMP_DOWN, rising(60, 60, 15)))
              .orElseThrow();
      assertThat(chart.change()).isEmpty();
      assertThat(chart.isOutNow()).isFalse();
    }

    @Test
    void aFasterPumpIsNoChangeForTheWorse() {
      ControlChart chart =
          ControlChart.of(CareFigure.PUMP_DOWN, points(CareFigure.PUMP_DOWN, rising(60, 40, -15)))
              .orElseThrow();
      assertThat(chart.change().orElseThrow().worse()).isFalse();
    }
  }

  @Test
  void aFewRunsSayNothingYet() {
    assertThat(ControlChart.of(CareFigure.PUMP_DOWN, points(CareFigure.PUMP_DOWN, rising(7, 9, 1))))
        .isEmpty();
  }

  @Nested
  class LikelyCauses {

    @Test
    void aSlowPumpWithoutALeakIsThePump() {
      DryerHealth health = DryerHealth.of(points(CareFigure.PUMP_DOWN, rising(60, 40, 15)));
      assertThat(health.causes()).containsExactly(LikelyCause.PUMP_WEARS);
      assertThat(health.charts()).hasSize(1);
    }

    @Test
    void aLeakIsNotBlamedOnThePump() {
      assertThat(LikelyCause.of(EnumSet.of(CareFigure.PUMP_DOWN, CareFigure.LEAK_RISE)))
          .containsExactly(LikelyCause.LEAK);
      assertThat(LikelyCause.of(EnumSet.noneOf(CareFigure.class))).isEmpty();
      assertThat(LikelyCause.PUMP_WEARS.figures()).containsExactly(CareFigure.PUMP_DOWN);
    }
  }

  @Nested
  class DueList {

    private final Instant now = START.plus(Duration.ofDays(100));

    private CareTask oil(Optional<Instant> last) {
      return new CareTask("oil", last, Optional.of(Duration.ofDays(180)), 1000);
    }

    @Test
    void goesByCalendarOrByRunningHoursWhicheverComesFirst() {
      CareTask task = oil(Optional.of(START));
      assertThat(task.at(now, 200)).isEqualTo(CareTask.Standing.LATER);
      assertThat(task.at(now, 950)).isEqualTo(CareTask.Standing.SOON);
      assertThat(task.at(now, 1000)).isEqualTo(CareTask.Standing.DUE);
      assertThat(task.at(START.plus(Duration.ofDays(181)), 0)).isEqualTo(CareTask.Standing.DUE);
      assertThat(oil(Optional.empty()).at(now, 0)).isEqualTo(CareTask.Standing.UNKNOWN);
      assertThat(task.used(now, 200)).isCloseTo(100.0 / 180, within(1e-9));
    }

    @Test
    void refusesATaskWithoutAnInterval() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new CareTask("oil", Optional.empty(), Optional.empty(), 0))
          .withMessageContaining("oil");
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new CareTask("oil", Optional.empty(), Optional.of(Duration.ZERO), 0));
    }
  }

  @Test
  void refusesNonsense() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Ewma(0, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Cusum(-1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> Baseline.of(List.of(1.0), 5));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new CarePoint(CareFigure.PUMP_DOWN, START, "run 3", Double.NaN))
        .withMessageContaining("run 3");
    assertThatIllegalArgumentException().isThrownBy(() -> new Baseline(Double.NaN, 1, 3));
    assertThat(CareFigure.find("pump-down")).contains(CareFigure.PUMP_DOWN);
    assertThat(CareFigure.find("luck")).isEmpty();
    assertThat(CareFigure.PUMP_DOWN.unit()).isEqualTo("s");
  }
}
