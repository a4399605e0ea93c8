package org.firnline.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.golden.GoldenRow;
import org.firnline.matter.vapor.HuberEtAl2009Viscosity;
import org.firnline.matter.vapor.HuberEtAl2012Conductivity;
import org.firnline.matter.vapor.WagnerPruss2002Vapor;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LiquidAndVaporTest {

  private static final LiquidVaporPressure WAGNER_PRUSS = new WagnerPruss1993Liquid();
  private static final LiquidVaporPressure MURPHY_KOOP = new MurphyKoop2005Liquid();
  private static final Humidity HUMIDITY = new Humidity();

  private static void meets(double value, GoldenRow row, QuantityKind kind) {
    assertThat(value).isCloseTo(row.si(kind), within(row.allowed(kind)));
  }

  @Nested
  class SaturationOfLiquid {

    static Stream<GoldenRow> wagnerPruss() {
      return GoldenRow.of("water-saturation-pressure.csv");
    }

    static Stream<GoldenRow> otherReleases() {
      return GoldenRow.of("water-saturation-pressure-others.csv");
    }

    static Stream<GoldenRow> murphyKoop() {
      return GoldenRow.of("liquid-vapor-pressure-murphy-koop.csv");
    }

    /** Other releases of IAPWS are met as closely as the releases agree among each other. */
    @ParameterizedTest
    @MethodSource({"wagnerPruss", "otherReleases"})
    void meetsTheReleases(GoldenRow row) {
      if (row.unit().equals("K")) {
        double saturation =
            WAGNER_PRUSS.saturationTemperature(row.conditionSi(QuantityKind.PRESSURE));
        assertThat(saturation).isCloseTo(row.value(), within(2e-5 * row.value()));
      } else {
        double pressure = WAGNER_PRUSS.pressure(row.conditionSi(QuantityKind.TEMPERATURE));
        meets(pressure, row, QuantityKind.PRESSURE);
      }
    }

    @ParameterizedTest
    @MethodSource("murphyKoop")
    void meetsTheTableOfTheSecondOpinion(GoldenRow row) {
      double pressure = MURPHY_KOOP.pressure(row.conditionSi(QuantityKind.TEMPERATURE));
      meets(pressure, row, QuantityKind.PRESSURE);
    }

    @Property
    void bothEquationsAgreeWhereBothHold(
        @ForAll @DoubleRange(min = 273.16, max = 332) double temperature) {
      double reference = WAGNER_PRUSS.pressure(temperature);
      assertThat(MURPHY_KOOP.pressure(temperature)).isCloseTo(reference, within(5e-4 * reference));
    }

    @Property
    void theInverseUndoesThePressure(
        @ForAll @DoubleRange(min = 273.16, max = 330) double temperature) {
      for (LiquidVaporPressure liquid : new LiquidVaporPressure[] {WAGNER_PRUSS, MURPHY_KOOP}) {
        assertThat(liquid.saturationTemperature(liquid.pressure(temperature)))
            .isCloseTo(temperature, within(1e-10 * temperature));
      }
    }

    /** Ice and liquid have one vapor pressure at the triple point, to the digits of both. */
    @Test
    void meetsIceAtTheTriplePoint() {
      double triple = Water.TRIPLE_POINT_TEMPERATURE;
      double ice = HUMIDITY.overIce(triple);
      assertThat(WAGNER_PRUSS.pressure(triple)).isCloseTo(ice, within(1e-5 * ice));
      assertThat(MURPHY_KOOP.pressure(triple)).isCloseTo(ice, within(1e-5 * ice));
    }

    @Test
    void isRefusedOutsideItsRange() {
      assertThatIllegalArgumentException().isThrownBy(() -> WAGNER_PRUSS.pressure(273));
      assertThatIllegalArgumentException().isThrownBy(() -> WAGNER_PRUSS.pressure(648));
      assertThatIllegalArgumentException().isThrownBy(() -> MURPHY_KOOP.pressure(333));
      assertThatIllegalArgumentException().isThrownBy(() -> WAGNER_PRUSS.saturationTemperature(1));
    }
  }

  @Nested
  class HumidityOfAir {

    static Stream<GoldenRow> derived() {
      return GoldenRow.of("humidity.csv");
    }

    static Stream<GoldenRow> partsPerMillion() {
      return GoldenRow.of("frost-point-ppmv.csv");
    }

    @ParameterizedTest
    @MethodSource("derived")
    void meetsTheTable(GoldenRow row) {
      double temperature = row.conditionSi(QuantityKind.TEMPERATURE);
      double ice = HUMIDITY.overIce(temperature);
      switch (row.quantity()) {
        case "dew_point_from_frost_point" ->
            meets(HUMIDITY.dewPoint(ice), row, QuantityKind.TEMPERATURE);
        case "RH_over_water_at_ice_saturation" -> percent(HUMIDITY.relative(ice, temperature), row);
        case "RH_over_ice_at_water_saturation" ->
            percent(HUMIDITY.relativeOverIce(HUMIDITY.overLiquid(temperature), temperature), row);
        case "RH_at_25C_from_frost_point" -> percent(HUMIDITY.relative(ice, 298.15), row);
        default -> throw new IllegalStateException("no check for " + row.quantity());
      }
    }

    private static void percent(double share, GoldenRow row) {
      double allowed = row.relative() ? row.tolerance() * row.value() : row.tolerance();
      assertThat(100 * share).isCloseTo(row.value(), within(allowed));
    }

    @ParameterizedTest
    @MethodSource("partsPerMillion")
    void meetsTheFrostPointTable(GoldenRow row) {
      double ice = HUMIDITY.overIce(row.conditionSi(QuantityKind.TEMPERATURE));
      assertThat(1e6 * ice / 101_325).isCloseTo(row.value(), within(row.tolerance() * row.value()));
    }

    @Test
    void comparesWithWhateverIsStable() {
      assertThat(HUMIDITY.overStablePhase(263.15)).isEqualTo(HUMIDITY.overIce(263.15));
      assertThat(HUMIDITY.overStablePhase(293.15)).isEqualTo(WAGNER_PRUSS.pressure(293.15));
      assertThat(HUMIDITY.frostPoint(HUMIDITY.overIce(250))).isCloseTo(250, within(1e-9));
      assertThat(HUMIDITY.dewPoint(2339.1937)).isCloseTo(293.15, within(1e-5));
    }
  }

  @Nested
  class VaporAsAGas {

    static Stream<GoldenRow> viscosities() {
      return Stream.concat(
          GoldenRow.of("vapor-viscosity.csv"), GoldenRow.of("vapor-viscosity-handbook.csv"));
    }

    static Stream<GoldenRow> conductivities() {
      return GoldenRow.of("vapor-conductivity.csv");
    }

    static Stream<GoldenRow> ratios() {
      return GoldenRow.of("vapor-heat-capacity-ratio.csv");
    }

    static Stream<GoldenRow> constants() {
      return GoldenRow.of("water-constants.csv");
    }

    @ParameterizedTest
    @MethodSource("viscosities")
    void hasThePublishedViscosity(GoldenRow row) {
      double viscosity = new HuberEtAl2009Viscosity().at(row.conditionSi(QuantityKind.TEMPERATURE));
      meets(viscosity, row, QuantityKind.VISCOSITY);
    }

    @ParameterizedTest
    @MethodSource("conductivities")
    void hasThePublishedConductivity(GoldenRow row) {
      double conductivity =
          new HuberEtAl2012Conductivity().at(row.conditionSi(QuantityKind.TEMPERATURE));
      meets(conductivity, row, QuantityKind.CONDUCTIVITY);
    }

    @ParameterizedTest
    @MethodSource("ratios")
    void hasThePublishedHeatCapacityRatio(GoldenRow row) {
      double ratio =
          new WagnerPruss2002Vapor().heatCapacityRatio(row.conditionSi(QuantityKind.TEMPERATURE));
      meets(ratio, row, QuantityKind.NUMBER);
    }

    /** 1.33 serves from 233 to 298 K: within 0.12 % of the ratio itself. */
    @Property
    void hasNearlyTheConstantRatioUsedForDucts(
        @ForAll @DoubleRange(min = 233, max = 298) double temperature) {
      assertThat(new WagnerPruss2002Vapor().heatCapacityRatio(temperature))
          .isCloseTo(Water.VAPOR_HEAT_CAPACITY_RATIO, within(0.0016));
    }

    @ParameterizedTest
    @MethodSource("constants")
    void hasThePublishedConstants(GoldenRow row) {
      boolean molar = row.quantity().equals("molar_mass_water");
      double value = molar ? Water.MOLAR_MASS : Water.VAPOR_GAS_CONSTANT;
      meets(value, row, molar ? QuantityKind.MOLAR_MASS : QuantityKind.SPECIFIC_HEAT);
    }

    @Test
    void isRefusedOutsideItsRange() {
      assertThatIllegalArgumentException().isThrownBy(() -> new HuberEtAl2009Viscosity().at(100));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new HuberEtAl2012Conductivity().at(2000));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new WagnerPruss2002Vapor().heatCapacityRatio(100));
    }
  }

  @Nested
  class HeatInIce {

    static Stream<GoldenRow> yen() {
      return GoldenRow.of("ice-conductivity-yen.csv");
    }

    static Stream<GoldenRow> others() {
      return GoldenRow.of("ice-conductivity-others.csv");
    }

    static Stream<GoldenRow> fusion() {
      return GoldenRow.of("fusion-enthalpy.csv");
    }

    @ParameterizedTest
    @MethodSource({"yen", "others"})
    void isConductedAsPublished(GoldenRow row) {
      double conductivity = new Yen1981Conductivity().at(row.conditionSi(QuantityKind.TEMPERATURE));
      meets(conductivity, row, QuantityKind.CONDUCTIVITY);
    }

    @ParameterizedTest
    @MethodSource("fusion")
    void isReleasedByFreezingAsPublished(GoldenRow row) {
      meets(Water.FUSION_ENTHALPY, row, QuantityKind.SPECIFIC_ENERGY);
    }

    @Test
    void isRefusedForWarmIce() {
      assertThatIllegalArgumentException().isThrownBy(() -> new Yen1981Conductivity().at(274));
    }
  }

  @Nested
  class OldTablesOfIce {

    static Stream<GoldenRow> handbooks() {
      return GoldenRow.of("ice-vapor-pressure-handbooks.csv");
    }

    static Stream<GoldenRow> table() {
      return Stream.concat(
          GoldenRow.of("ice-vapor-pressure-table.csv"),
          GoldenRow.of("ice-vapor-pressure-equation-of-state.csv"));
    }

    @ParameterizedTest
    @MethodSource({"handbooks", "table"})
    void areMetAsFarAsTheyAgree(GoldenRow row) {
      double pressure = new WagnerEtAl2011Ice().pressure(row.conditionSi(QuantityKind.TEMPERATURE));
      meets(pressure, row, QuantityKind.PRESSURE);
    }
  }

  @Nested
  class SublimationSeenOtherwise {

    private static final MurphyKoop2005Enthalpy ENTHALPY = new MurphyKoop2005Enthalpy();

    static Stream<GoldenRow> enthalpies() {
      return GoldenRow.of("sublimation-enthalpy-others.csv");
    }

    static Stream<GoldenRow> temperatures() {
      return GoldenRow.of("ice-temperature-equation-of-state.csv");
    }

    /** Steam tables, a food handbook, and the entropy L/T of the equations of state. */
    @ParameterizedTest
    @MethodSource("enthalpies")
    void needsThePublishedHeat(GoldenRow row) {
      double temperature =
          Math.min(row.conditionSi(QuantityKind.TEMPERATURE), Water.TRIPLE_POINT_TEMPERATURE);
      switch (row.unit()) {
        case "kJ/mol" -> meets(ENTHALPY.molar(temperature), row, QuantityKind.MOLAR_ENERGY);
        case "J/(kg K)" ->
            meets(ENTHALPY.specific(temperature) / temperature, row, QuantityKind.SPECIFIC_HEAT);
        default -> meets(ENTHALPY.specific(temperature), row, QuantityKind.SPECIFIC_ENERGY);
      }
    }

    @ParameterizedTest
    @MethodSource("temperatures")
    void happensAtThePublishedTemperature(GoldenRow row) {
      double temperature =
          new WagnerEtAl2011Ice().saturationTemperature(row.conditionSi(QuantityKind.PRESSURE));
      meets(temperature, row, QuantityKind.TEMPERATURE);
    }
  }
}
