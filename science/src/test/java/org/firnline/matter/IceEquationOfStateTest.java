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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IceEquationOfStateTest {

  private static final double ATMOSPHERE = 101_325;
  private static final FeistelWagner2006Ice ICE = new FeistelWagner2006Ice();

  static Stream<GoldenRow> release() {
    return GoldenRow.of("ice-equation-of-state.csv");
  }

  static Stream<GoldenRow> table() {
    return GoldenRow.of("ice-properties.csv");
  }

  /** Conditions read "273.16 K, 611.657 Pa"; values are printed in SI. */
  @ParameterizedTest
  @MethodSource("release")
  void meetsTheCheckValuesOfTheRelease(GoldenRow row) {
    String[] parts = row.condition().split(", ");
    double temperature = org.firnline.units.Quantity.parse(parts[0], QuantityKind.TEMPERATURE).si();
    double pressure = org.firnline.units.Quantity.parse(parts[1], QuantityKind.PRESSURE).si();
    double value =
        switch (row.quantity()) {
          case "ice_gibbs" -> ICE.gibbsEnergy(temperature, pressure);
          case "ice_enthalpy" -> ICE.enthalpy(temperature, pressure);
          case "ice_entropy" -> ICE.entropy(temperature, pressure);
          case "ice_cp" -> ICE.heatCapacity(temperature, pressure);
          case "ice_density" -> ICE.density(temperature, pressure);
          case "ice_expansion" -> ICE.expansion(temperature, pressure);
          case "ice_compressibility" -> ICE.compressibility(temperature, pressure);
          default -> throw new IllegalStateException("no check for " + row.quantity());
        };
    assertThat(value).isCloseTo(row.value(), within(row.tolerance() * Math.abs(row.value())));
  }

  @ParameterizedTest
  @MethodSource("table")
  void meetsTheTableAtAtmosphericPressure(GoldenRow row) {
    boolean density = row.quantity().equals("ice_density");
    QuantityKind kind = density ? QuantityKind.DENSITY : QuantityKind.SPECIFIC_HEAT;
    double temperature =
        Math.min(row.conditionSi(QuantityKind.TEMPERATURE), Water.TRIPLE_POINT_TEMPERATURE);
    double pressure = row.condition().startsWith("273.16") ? 611.657 : ATMOSPHERE;
    double value =
        density ? ICE.density(temperature, pressure) : ICE.heatCapacity(temperature, pressure);
    assertThat(value).isCloseTo(row.si(kind), within(row.allowed(kind)));
  }

  /** Central difference, step 1e-3 K: error of second order, below 1e-6 relative. */
  @Property
  void heatCapacityIsTheSlopeOfEnthalpy(
      @ForAll @DoubleRange(min = 150, max = 273) double temperature) {
    double step = 1e-3;
    double slope =
        (ICE.enthalpy(temperature + step, ATMOSPHERE)
                - ICE.enthalpy(temperature - step, ATMOSPHERE))
            / (2 * step);
    assertThat(ICE.heatCapacity(temperature, ATMOSPHERE)).isCloseTo(slope, within(1e-6 * slope));
  }

  /**
   * The chosen density of ice, 917 kg/m3, is that of 0 °C rounded; ice at −40 °C is 0.6 % denser.
   */
  @Test
  void explainsTheDensityUsedEverywhere() {
    assertThat(Water.ICE_DENSITY).isCloseTo(ICE.density(273.15, ATMOSPHERE), within(0.5));
  }

  @Test
  void refusesWarmIce() {
    assertThatIllegalArgumentException().isThrownBy(() -> ICE.density(273.17, ATMOSPHERE));
    assertThatIllegalArgumentException().isThrownBy(() -> ICE.density(0, ATMOSPHERE));
  }
}
