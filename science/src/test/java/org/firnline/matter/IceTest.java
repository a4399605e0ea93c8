package org.firnline.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.golden.GoldenRow;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IceTest {

  private static final IceVaporPressure REFERENCE = new WagnerEtAl2011Ice();
  private static final IceVaporPressure SECOND_OPINION = new MurphyKoop2005Ice();
  private static final MurphyKoop2005Enthalpy ENTHALPY = new MurphyKoop2005Enthalpy();

  /**
   * Murphy and Koop state 0.05 to 0.011 per mille below the equations of state; 0.02 % covers it.
   */
  private static final double ENTHALPY_OF_EQUATIONS_OF_STATE = 2e-4;

  @Nested
  class PublishedPressures {

    static Stream<GoldenRow> iapws() {
      return GoldenRow.of("ice-vapor-pressure.csv");
    }

    static Stream<GoldenRow> murphyKoop() {
      return GoldenRow.of("ice-vapor-pressure-murphy-koop.csv");
    }

    static Stream<GoldenRow> temperatures() {
      return GoldenRow.of("ice-temperature.csv");
    }

    @ParameterizedTest
    @MethodSource("iapws")
    void areMetByTheReferenceEquation(GoldenRow row) {
      assertThat(REFERENCE.pressure(row.conditionSi(QuantityKind.TEMPERATURE)))
          .isCloseTo(row.si(QuantityKind.PRESSURE), within(row.allowed(QuantityKind.PRESSURE)));
    }

    @ParameterizedTest
    @MethodSource("murphyKoop")
    void areMetByTheSecondEquation(GoldenRow row) {
      assertThat(SECOND_OPINION.pressure(row.conditionSi(QuantityKind.TEMPERATURE)))
          .isCloseTo(row.si(QuantityKind.PRESSURE), within(row.allowed(QuantityKind.PRESSURE)));
    }

    @ParameterizedTest
    @MethodSource("temperatures")
    void leadBackToTheirTemperatures(GoldenRow row) {
      assertThat(REFERENCE.saturationTemperature(row.conditionSi(QuantityKind.PRESSURE)))
          .isCloseTo(
              row.si(QuantityKind.TEMPERATURE), within(row.allowed(QuantityKind.TEMPERATURE)));
    }
  }

  @Nested
  class PublishedEnthalpies {

    static Stream<GoldenRow> molar() {
      return GoldenRow.of("sublimation-enthalpy-murphy-koop.csv");
    }

    @ParameterizedTest
    @MethodSource("molar")
    void areMetByTheEquationUsed(GoldenRow row) {
      assertThat(ENTHALPY.molar(row.conditionSi(QuantityKind.TEMPERATURE)))
          .isCloseTo(
              row.si(QuantityKind.MOLAR_ENERGY), within(row.allowed(QuantityKind.MOLAR_ENERGY)));
    }

    static Stream<GoldenRow> equationsOfState() {
      return GoldenRow.of("sublimation-enthalpy.csv")
          .filter(row -> row.unit().contains("/kg") && row.condition().matches("-?\\d+ \\S+"));
    }

    @ParameterizedTest
    @MethodSource("equationsOfState")
    void areMetWithinTheStatedAccuracy(GoldenRow row) {
      double published = row.si(QuantityKind.SPECIFIC_ENERGY);
      assertThat(ENTHALPY.specific(row.conditionSi(QuantityKind.TEMPERATURE)))
          .isCloseTo(published, within(ENTHALPY_OF_EQUATIONS_OF_STATE * published));
    }
  }

  @Nested
  class Laws {

    /** Table 1 of the reference file: the two equations differ by at most 0.064 %. */
    private static final double AGREEMENT = 7e-4;

    @Property
    void bothEquationsAgree(@ForAll @DoubleRange(min = 193.15, max = 273.16) double temperature) {
      double reference = REFERENCE.pressure(temperature);
      assertThat(SECOND_OPINION.pressure(temperature))
          .isCloseTo(reference, within(AGREEMENT * reference));
    }

    @Property
    void theInverseUndoesThePressure(
        @ForAll @DoubleRange(min = 120, max = 273.16) double temperature) {
      assertThat(REFERENCE.saturationTemperature(REFERENCE.pressure(temperature)))
          .isCloseTo(temperature, within(1e-11 * temperature));
    }

    /** Central difference, step 1e-3 K: error of second order, below 1e-8. */
    @Property
    void theSlopeIsTheDerivative(@ForAll @DoubleRange(min = 120, max = 273) double temperature) {
      double step = 1e-3;
      for (IceVaporPressure ice : new IceVaporPressure[] {REFERENCE, SECOND_OPINION}) {
        double difference =
            Math.log(ice.pressure(temperature + step) / ice.pressure(temperature - step))
                / (2 * step);
        assertThat(ice.logarithmicSlope(temperature)).isCloseTo(difference, within(1e-8));
      }
    }

    /**
     * Clausius–Clapeyron for an ideal vapor over ice of negligible volume: L = R T² d(ln p)/dT. The
     * non-ideality of the vapor and the ice volume stay below 0.1 % here.
     */
    @Property
    void theSlopeGivesTheEnthalpyOfSublimation(
        @ForAll @DoubleRange(min = 200, max = 273) double temperature) {
      double byClapeyron =
          Water.GAS_CONSTANT * temperature * temperature * REFERENCE.logarithmicSlope(temperature);
      assertThat(ENTHALPY.molar(temperature)).isCloseTo(byClapeyron, within(1e-3 * byClapeyron));
    }
  }

  @Nested
  class OutsideItsRange {

    @Test
    void anEquationRefusesInsteadOfGuessing() {
      assertThatIllegalArgumentException().isThrownBy(() -> REFERENCE.pressure(273.17));
      assertThatIllegalArgumentException().isThrownBy(() -> SECOND_OPINION.pressure(100));
      assertThatIllegalArgumentException().isThrownBy(() -> REFERENCE.saturationTemperature(612));
    }
  }
}
