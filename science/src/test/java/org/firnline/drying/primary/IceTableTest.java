package org.firnline.drying.primary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IceTableTest {

  /** Promised by the table and asked of every table of this equation: 1e-7; held tighter here. */
  private static final double PRESSURE_AGREEMENT = 2e-8;

  private static final double ENTHALPY_AGREEMENT = 1e-7;

  private final IceTable table = IceTable.shared();
  private final WagnerEtAl2011Ice ice = new WagnerEtAl2011Ice();

  @Test
  void staysWithinItsPromiseOfTheEquations() {
    var enthalpy = new MurphyKoop2005Enthalpy();
    for (double kelvin = 130; kelvin <= 273.16; kelvin += 0.0137) {
      double pressure = ice.pressure(kelvin);
      assertThat(table.pressure(kelvin)).isCloseTo(pressure, within(PRESSURE_AGREEMENT * pressure));
      double heat = enthalpy.specific(kelvin);
      assertThat(table.specific(kelvin)).isCloseTo(heat, within(ENTHALPY_AGREEMENT * heat));
    }
  }

  @Test
  void meetsTheTriplePointExactly() {
    assertThat(table.pressure(Water.TRIPLE_POINT_TEMPERATURE))
        .isCloseTo(Water.TRIPLE_POINT_PRESSURE, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {150.03, 201.7, 240.06, 272.99})
  void slopesAreThoseOfThePressure(double kelvin) {
    double step = 1e-4;
    double slope = (table.pressure(kelvin + step) - table.pressure(kelvin - step)) / (2 * step);
    assertThat(table.slope(kelvin)).isCloseTo(slope, within(1e-6 * slope));
    double exact = ice.pressure(kelvin) * ice.logarithmicSlope(kelvin);
    assertThat(table.slope(kelvin)).isCloseTo(exact, within(1e-5 * exact));
    double bend = (table.slope(kelvin + step) - table.slope(kelvin - step)) / (2 * step);
    assertThat(table.curvature(kelvin)).isCloseTo(bend, within(1e-3 * bend));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.1, 1, 10, 100, 611})
  void leadsBackFromPressureToTemperature(double pressure) {
    double kelvin = table.saturationTemperature(pressure);
    assertThat(table.pressure(kelvin)).isCloseTo(pressure, within(1e-12 * pressure));
    assertThat(kelvin).isCloseTo(ice.saturationTemperature(pressure), within(1e-7));
  }

  @Test
  void answersBelowTheTableWithTheEquation() {
    assertThat(table.pressure(90)).isEqualTo(ice.pressure(90));
  }
}
