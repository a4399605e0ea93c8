package org.firnline.app.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.TimeAxis;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ColumnsTest {
  private record Point(double t_s, double low, double high) {}

  private static List<Point> reduce(TimeAxis time, double[] values, int columns) {
    List<Double> times = new ArrayList<>();
    List<double[]> ranges = new ArrayList<>();
    Columns reduced = Columns.of(time, 0, values.length, columns);
    reduced.times(times::add);
    reduced.reduce(series(values), (low, high) -> ranges.add(new double[] {low, high}));
    assertThat(times).hasSameSizeAs(ranges);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      points.add(new Point(times.get(i), ranges.get(i)[0], ranges.get(i)[1]));
    }
    return points;
  }

  private static Series series(double[] values) {
    return Series.of(values);
  }

  private static TimeAxis every(long step_ms, int rows) {
    long[] millis = new long[rows];
    for (int i = 0; i < rows; i++) {
      millis[i] = i * step_ms;
    }
    return TimeAxis.of(millis);
  }

  @Nested
  class ALongSeries {
    private final double[] values = new double[100_000];

    @Test
    void shrinksToThePixelsThereAre() {
      assertThat(reduce(every(1_000, values.length), values, 500)).hasSizeBetween(499, 502);
    }

    @Test
    void keepsASpikeOfOneSample() {
      values[61_234] = 55;
      values[33_333] = -44;
      List<Point> points = reduce(every(1_000, values.length), values, 300);
      assertThat(points.stream().mapToDouble(Point::high).max()).hasValue(55);
      assertThat(points.stream().mapToDouble(Point::low).min()).hasValue(-44);
    }

    @Test
    void staysInOrderOfTime() {
      assertThat(reduce(every(1_000, values.length), values, 77))
          .extracting(Point::t_s)
          .isSorted()
          .doesNotHaveDuplicates();
    }
  }

  @Nested
  class AShortSeries {
    @Test
    void comesBackSampleBySample() {
      double[] values = {1, 2, 3};
      assertThat(reduce(every(60_000, 3), values, 1_000))
          .containsExactly(new Point(0, 1, 1), new Point(60, 2, 2), new Point(120, 3, 3));
    }

    @Test
    void mayBeEmpty() {
      assertThat(reduce(every(1_000, 0), new double[0], 100)).isEmpty();
    }
  }

  @Nested
  class Gaps {
    @Test
    void breakTheLineWhereRowsAreMissing() {
      long[] millis = {0, 60_000, 120_000, 3_600_000, 3_660_000};
      List<Point> points = reduce(TimeAxis.of(millis), new double[] {1, 1, 1, 2, 2}, 1_000);
      assertThat(points)
          .extracting(Point::t_s)
          .containsExactly(0.0, 60.0, 120.0, 3600.0, 3600.0, 3660.0);
      assertThat(points.get(3).low()).isNaN();
    }

    @Test
    void breakTheLineWhereAColumnOfPixelsHoldsNoValue() {
      double[] values = {1, Double.NaN, 3};
      List<Point> points = reduce(every(60_000, 3), values, 1_000);
      assertThat(points.get(1).low()).isNaN();
    }

    @Test
    void areNotBridgedWithinAColumnOfPixels() {
      long[] millis = {0, 1_000, 2_000, 10_000_000, 10_001_000};
      List<Point> points = reduce(TimeAxis.of(millis), new double[] {1, 1, 1, 9, 9}, 1);
      assertThat(points.stream().anyMatch(point -> Double.isNaN(point.low()))).isTrue();
    }
  }
}
