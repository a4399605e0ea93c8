package org.firnline.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1234.5 | 3 | 1230",
        "0.0012345 | 3 | 0.00123",
        "9.99 | 2 | 10",
        "0.0999 | 1 | 0.1",
        "-31.96 | 3 | −32.0",
        "2 | 4 | 2.000",
        "1e6 | 2 | 1000000",
        "0 | 5 | 0",
        "-0.0 | 3 | 0"
      })
  void haveTheDigitsTheyDeserve(double value, int digits, String text) {
    assertThat(Figures.significant(value, digits)).isEqualTo(text);
  }

  @Test
  void showWhatIsNoNumber() {
    assertThat(Figures.significant(Double.POSITIVE_INFINITY, 3)).isEqualTo("∞");
    assertThat(Figures.significant(Double.NEGATIVE_INFINITY, 3)).isEqualTo("−∞");
    assertThat(Figures.decimals(Double.NaN, 3)).isEqualTo("–");
  }

  @Test
  void haveNoMinusBeforeZero() {
    assertThat(Figures.decimals(-0.04, 1)).isEqualTo("0.0");
    assertThat(Figures.decimals(-0.05, 1)).isEqualTo("−0.1");
    assertThat(Figures.decimals(-12.345, 2)).isEqualTo("−12.35");
  }

  @Test
  void carryTheirUnit() {
    assertThat(Figures.print(241.15, QuantityKind.TEMPERATURE, Unit.parse("°C"), 1))
        .isEqualTo("−32.0 °C");
    assertThat(Figures.print(2, QuantityKind.TEMPERATURE_DIFFERENCE, Unit.parse("°C"), 1))
        .isEqualTo("2.0 °C");
    assertThat(Figures.print(10, QuantityKind.PRESSURE, Unit.parse("mTorr"), 0))
        .isEqualTo("75 mTorr");
    assertThat(Figures.print(0.8, QuantityKind.NUMBER, Unit.parse("1"), 1)).isEqualTo("0.8");
  }

  /** JCGM 100:2008, 7.2.6: at most two significant digits of an uncertainty. */
  @ParameterizedTest
  @CsvSource({"0.23, 2", "2.3, 1", "23, 0", "1000, 0", "0.004, 4", "0, 0", "Infinity, 0"})
  void stopWhereTheDoubtBegins(double uncertainty, int decimals) {
    assertThat(Figures.decimalsFor(uncertainty)).isEqualTo(decimals);
  }
}
