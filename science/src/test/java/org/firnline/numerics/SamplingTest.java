package org.firnline.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SamplingTest {

  @Nested
  class EvenPoints {

    /** The first 2^k points of a net hold one point in each of 2^k equal intervals. */
    @Test
    void fillEveryIntervalOnce() {
      List<double[]> points = SobolPoints.of(64, 2, 3);
      double shift = points.get(0)[1];
      long intervals =
          points.stream()
              .mapToInt(point -> (int) Math.floor(64 * ((point[1] - shift + 2) % 1 + 1e-9)))
              .distinct()
              .count();
      assertThat(intervals).isEqualTo(64);
    }

    /** E[xy] = 1/4 on the unit square, to the order 1/n of even points. */
    @Test
    void averageAProduct() {
      double mean =
          SobolPoints.of(4096, 2, 11).stream()
              .mapToDouble(p -> p[0] * p[1])
              .average()
              .orElseThrow();
      assertThat(mean).isCloseTo(0.25, within(10.0 / 4096));
    }

    @Test
    void stayInsideTheCube() {
      assertThat(SobolPoints.of(1024, 3, 0))
          .allMatch(p -> Arrays.stream(p).allMatch(x -> x > 0 && x < 1));
    }
  }

  @Nested
  class SeededNumbers {

    private final SeededUniform random = new SeededUniform(42);

    /** Standard error of a mean of n uniform numbers is sqrt(1/12n); five of them. */
    @Test
    void averageOneHalf() {
      int n = 100_000;
      double mean =
          IntStream.range(0, n).mapToDouble(i -> random.at(i, 0, 0)).average().orElseThrow();
      assertThat(mean).isCloseTo(0.5, within(5 * Math.sqrt(1.0 / 12 / n)));
    }

    /** Chi-square over 100 cells of two neighbors has 99 degrees of freedom: 0.1 % point 148.2. */
    @Test
    void areIndependentOfTheirNeighbors() {
      int n = 100_000;
      int[] cells = new int[100];
      for (int i = 0; i < n; i++) {
        cells[10 * (int) (10 * random.at(1, i, 0)) + (int) (10 * random.at(1, i + 1, 0))]++;
      }
      double expected = n / 100.0;
      double chi =
          IntStream.of(cells).mapToDouble(c -> (c - expected) * (c - expected) / expected).sum();
      assertThat(chi).isLessThan(148.2);
    }

    @Test
    void normalOnesHaveVarianceOne() {
      int n = 100_000;
      double square =
          IntStream.range(0, n)
              .mapToDouble(i -> Math.pow(random.normalAt(0, 0, i), 2))
              .average()
              .orElseThrow();
      assertThat(square).isCloseTo(1, within(5 * Math.sqrt(2.0 / n)));
    }
  }

  @Nested
  class Quantiles {

    @Test
    void lieOnStraightLinesBetweenMembers() {
      var quantile = new Quantile(4, 1, 3, 2);
      assertThat(quantile.at(0)).isEqualTo(1);
      assertThat(quantile.at(0.5)).isEqualTo(2.5);
      assertThat(quantile.at(1)).isEqualTo(4);
    }

    @Test
    void copeWithMembersThatNeverCome() {
      var quantile = new Quantile(1, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
      assertThat(quantile.at(0)).isEqualTo(1);
      assertThat(quantile.at(0.9)).isInfinite();
    }
  }
}
