package org.firnline.app.store.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeriesCodecTest {
  private static final long START_MS = 1_790_000_000_000L;

  private static Samples everyMinute(double... values) {
    return new Samples(
        LongStream.range(0, values.length).map(n -> START_MS + 60_000 * n).toArray(), values);
  }

  private static void comesBack(Samples samples) {
    assertThat(SeriesCodec.unpack(SeriesCodec.pack(samples))).isEqualTo(samples);
  }

  /** A log as dryers write them: two decimals, some noise in the last. */
  private static Samples shelf(int size) {
    Random noise = new Random(7);
    return everyMinute(
        DoubleStream.generate(() -> Math.rint(-2_000 + 3 * noise.nextGaussian()) / 100)
            .limit(size)
            .toArray());
  }

  @Nested
  class EverySample {
    @Test
    void comesBackToTheLastBit() {
      comesBack(everyMinute(-39.6, -39.5, 0.081, 1e5, 0));
      comesBack(everyMinute(Math.PI, Math.E, -Math.sqrt(2), 1e300, Double.MIN_VALUE));
      comesBack(everyMinute(-0.0, 0.0, -0.0));
      comesBack(everyMinute(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.MAX_VALUE));
      comesBack(everyMinute());
      comesBack(everyMinute(4));
    }

    @Test
    void comesBackWhereSomeAreMissing() {
      comesBack(everyMinute(Double.NaN, -39.6, Double.NaN, Double.NaN, -39.5));
      comesBack(everyMinute(-39.6, Double.NaN));
      comesBack(everyMinute(Double.NaN));
      comesBack(everyMinute(1.5, Double.longBitsToDouble(0x7ff8000000000001L), 2.5));
    }

    @Test
    void comesBackAtAnyTime() {
      comesBack(new Samples(new long[] {5, 3, 3, Long.MAX_VALUE, Long.MIN_VALUE}, new double[5]));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void comesBackWhateverItIs(long seed) {
      Random random = new Random(seed);
      int size = random.nextInt(2_000);
      int decimals = random.nextInt(9);
      double power = Math.pow(10, decimals);
      double[] values = new double[size];
      long[] times = new long[size];
      for (int i = 0; i < size; i++) {
        values[i] =
            switch (random.nextInt(40)) {
              case 0 -> Double.NaN;
              case 1 -> seed > 5 ? Double.longBitsToDouble(random.nextLong()) : -0.5;
              default -> Math.rint(random.nextGaussian() * 1_000 * power) / power;
            };
        times[i] = random.nextLong() >> random.nextInt(64);
      }
      comesBack(new Samples(times, values));
    }

    @Test
    void comesBackFromKelvinsThatWereCelsius() {
      Samples kelvin =
          everyMinute(
              DoubleStream.of(shelf(500).value())
                  .map(c -> c + Quantity.parse("0 °C", QuantityKind.TEMPERATURE).si())
                  .toArray());
      comesBack(kelvin);
      assertThat(SeriesCodec.pack(kelvin).length).isLessThan(4 * 500);
    }
  }

  @Nested
  class ATypicalSample {
    @Test
    void takesAtMostFourBytes() {
      Samples block = shelf(SeriesCodec.FULL_BLOCK);
      assertThat(SeriesCodec.pack(block).length).isLessThanOrEqualTo(4 * block.size());
    }

    @Test
    void takesAtMostFourBytesWithAClockThatWavers() {
      Samples block = shelf(SeriesCodec.FULL_BLOCK);
      Random waver = new Random(3);
      long[] times = LongStream.of(block.time_ms()).map(t -> t + waver.nextInt(30)).toArray();
      assertThat(SeriesCodec.pack(new Samples(times, block.value())).length)
          .isLessThanOrEqualTo(4 * block.size());
    }
  }

  @Nested
  class BytesThatAreNoBlock {
    @Test
    void areRefused() {
      byte[] packed = SeriesCodec.pack(shelf(100));
      assertThatThrownBy(() -> SeriesCodec.unpack(java.util.Arrays.copyOf(packed, 20)))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> SeriesCodec.unpack(new byte[] {7, 7, 7, 7}))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> SeriesCodec.unpack(new byte[0]))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> Scale.ofKey(14)).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> new Samples(new long[1], new double[2]))
          .hasMessageContaining("1 times");
    }
  }
}
