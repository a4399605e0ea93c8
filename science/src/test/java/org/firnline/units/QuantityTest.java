package org.firnline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.firnline.golden.GoldenRow;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

  private static QuantityFormatException refusal(String text, QuantityKind kind) {
    var refusal =
        catchThrowableOfType(QuantityFormatException.class, () -> Quantity.parse(text, kind));
    assertThat(refusal).as("refusal of '" + text + "'").isNotNull();
    return refusal;
  }

  @Nested
  class PublishedConversions {

    static Stream<GoldenRow> rows() {
      return GoldenRow.of("units.csv");
    }

    private static QuantityKind kindOf(Unit unit) {
      return Arrays.stream(QuantityKind.values())
          .filter(kind -> kind.dimension().equals(unit.dimension()))
          .findFirst()
          .orElse(QuantityKind.NUMBER);
    }

    /** Both sides are read as text and compared in the unit of the published number. */
    @ParameterizedTest
    @MethodSource("rows")
    void areMet(GoldenRow row) {
      Unit wanted = Unit.parse(row.unit());
      QuantityKind kind = kindOf(wanted);
      double value =
          kind == QuantityKind.NUMBER
              ? Unit.parse(row.condition().substring(2)).factor() / wanted.factor()
              : Quantity.parse(row.condition(), kind).in(wanted);
      double allowed = row.relative() ? row.tolerance() * Math.abs(row.value()) : row.tolerance();
      assertThat(value).isCloseTo(row.value(), within(allowed));
    }
  }

  @Nested
  class WrittenByPeople {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "80 mTorr | PRESSURE | 10.665789473684211",
          "80mTorr | PRESSURE | 10.665789473684211",
          "80 micron | PRESSURE | 10.665789473684211",
          "0,1 mbar | PRESSURE | 10",
          "0,100 mbar | PRESSURE | 10",
          "100 µbar | PRESSURE | 10",
          "1e-1 mbar | PRESSURE | 10",
          "1E−1 mbar | PRESSURE | 10",
          ".1 mbar | PRESSURE | 10",
          "+10 Pa | PRESSURE | 10",
          "-32 °C | TEMPERATURE | 241.15",
          "−32 °C | TEMPERATURE | 241.15",
          "–32 °C | TEMPERATURE | 241.15",
          "-32C | TEMPERATURE | 241.15",
          "-4 degF | TEMPERATURE | 253.15",
          "2 °C | TEMPERATURE_DIFFERENCE | 2",
          "9 °F | TEMPERATURE_DIFFERENCE | 5",
          "5 % | FRACTION | 0.05",
          "5% | FRACTION | 0.05",
          "0.05 | FRACTION | 0.05",
          "0 1 | NUMBER | 0",
          "1.04 W/m2/K/Pa | HEAT_TRANSFER_PER_PRESSURE | 1.04",
          "1.04 W·m⁻²·K⁻¹·Pa⁻¹ | HEAT_TRANSFER_PER_PRESSURE | 1.04",
          "10 W / (m² K) | HEAT_TRANSFER | 10",
          "10 W m-2 K-1 | HEAT_TRANSFER | 10",
          "10 W * m^-2 * K^-1 | HEAT_TRANSFER | 10",
          "2.4e-4 cal/s/cm2/K | HEAT_TRANSFER | 10.0416",
          "1 cm2.Torr.h/g | CAKE_RESISTANCE | 47996.05263157895",
          "10 cm.Torr.h/g | CAKE_RESISTANCE_PER_DEPTH | 47996052.63157895",
          "3.1 1/Torr | PER_PRESSURE | 0.023251912163829262",
          "6 kg/24h | MASS_FLOW | 6.944444444444444e-5",
          "6 kg/(24 h) | MASS_FLOW | 6.944444444444444e-5",
          "0.5 K/min | TEMPERATURE_RATE | 0.008333333333333333",
          "0.9 °F/min | TEMPERATURE_RATE | 0.008333333333333333",
          "0.02 mbar.L/s | LEAK_RATE | 0.002",
          "5e7 Pa.s/kg | MOUTH_RESISTANCE | 5e7",
          "40 kJ/mol | MOLAR_ENERGY | 40000"
        })
    void isRead(String text, QuantityKind kind, double si) {
      assertThat(Quantity.parse(text, kind).si()).isCloseTo(si, within(1e-13 * Math.abs(si)));
    }

    @Test
    void mayHaveBlanksThatDoNotBreak() {
      assertThat(Quantity.parse("80\u00a0mTorr ", QuantityKind.PRESSURE))
          .isEqualTo(Quantity.parse("80 mTorr", QuantityKind.PRESSURE));
      assertThat(Quantity.parse("\u2009−32\u202f°C", QuantityKind.TEMPERATURE))
          .isEqualTo(Quantity.parse("-32 °C", QuantityKind.TEMPERATURE));
    }

    @ParameterizedTest
    @EnumSource(QuantityKind.class)
    void isReadAsTheExampleOfEveryKindShows(QuantityKind kind) {
      assertThat(Quantity.parse(kind.example(), kind).si()).isNotEqualTo(0.0);
      assertThat(Unit.parse(kind.siUnit()).factor()).isEqualTo(1);
      assertThat(Unit.parse(kind.siUnit()).dimension()).isEqualTo(kind.dimension());
    }
  }

  @Nested
  class Refused {

    @ParameterizedTest
    @ValueSource(strings = {"1,234 Pa", "12,345 Pa", "-1,234 Pa"})
    void whereACommaMayBeAThousand(String text) {
      assertThat(refusal(text, QuantityKind.PRESSURE).getMessage())
          .contains("may mean a thousand or a decimal");
    }

    @Test
    void withBothReadingsAsAdvice() {
      assertThat(refusal("1,234 Pa", QuantityKind.PRESSURE).advice())
          .isEqualTo("write 1234 or 1.234");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,234.5 Pa", "1.234,5 Pa", "1 234 Pa", "1,234,567 Pa", "1.2.3 Pa"})
    void whereANumberHasMoreThanOneMark(String text) {
      assertThat(refusal(text, QuantityKind.PRESSURE).getMessage())
          .contains("more than one mark in its number");
    }

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "80 | PRESSURE | the unit is missing after '80'",
          "mTorr | PRESSURE | does not start with a number",
          "'' | PRESSURE | does not start with a number",
          "80 mL | PRESSURE | 'mL' is not a unit of pressure",
          "80 furlong | PRESSURE | unknown unit 'furlong'",
          "10 W/m2/furlong | HEAT_TRANSFER | unknown unit 'furlong' in 'W/m2/furlong'",
          "10 W/(m2 K | HEAT_TRANSFER | a bracket is not closed",
          "10 W/m2/K) | HEAT_TRANSFER | unexpected ')'",
          "10 W/ | HEAT_TRANSFER | a unit symbol is missing",
          "10 W/m2!K | HEAT_TRANSFER | unexpected '!'",
          "1e999 Pa | PRESSURE | is too large",
          "-300 °C | TEMPERATURE | lies below absolute zero",
          "150 % | FRACTION | is no share between 0 and 1",
          "-1 % | FRACTION | is no share between 0 and 1"
        })
    void withTheReason(String text, QuantityKind kind, String reason) {
      QuantityFormatException refusal = refusal(text, kind);
      assertThat(refusal.getMessage()).contains(reason);
      assertThat(refusal.advice()).isNotBlank();
    }

    @Test
    void withTheNearestUnitAsAdvice() {
      assertThat(refusal("80 mtORR", QuantityKind.PRESSURE).advice())
          .isEqualTo("did you mean mTorr?");
      assertThat(refusal("1 MPA", QuantityKind.PRESSURE).advice())
          .isEqualTo("did you mean mPa or MPa?");
    }

    @Test
    void whereAMicronWouldBeALength() {
      assertThat(refusal("5 micron", QuantityKind.LENGTH).advice()).contains("write µm");
    }

    @Test
    void whereAValueIsNotFinite() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Quantity(Double.NaN, QuantityKind.PRESSURE, Unit.parse("Pa")));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> Quantity.parse("10 Pa", QuantityKind.PRESSURE).in(Unit.parse("mL")));
      assertThatIllegalArgumentException().isThrownBy(() -> new Unit("x", 0, 0, Dimension.NONE));
    }
  }
}
