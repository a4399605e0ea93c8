package org.firnline.drying.primary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.firnline.lab.CakeResistance;
import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.MurphyKoop2005Ice;
import org.firnline.matter.SublimationEnthalpy;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Primary drying of worked examples that state inputs and outputs. */
class PublishedPrimaryDryingTest {

  private static final double HOUR = 3_600;

  /**
   * A front of fixed temperature under a cake that grows: t = W (R_0 + A_1 L/2)/(p(T) − P). Outputs
   * derived from the stated inputs with the vapor pressure of Murphy &amp; Koop (2005), to the
   * digits printed.
   */
  @ParameterizedTest
  @CsvSource({"240.15, 8, 36.525, 5e-4", "248.15, 10, 13.5126, 5e-5"})
  void aFrontOfFixedTemperatureTakesTheClosedFormTime(
      double front_K, double pressure_Pa, double hours, double printed) {
    double area = 1e-3;
    Slab slab = new Slab(9 * area, 0.01, area, area, 1e12);
    DryingVessel vessel = new DryingVessel(slab, new CakeResistance(4.8e4, 4.8e7, 0), 0);
    var front = new QuasiSteadyFront(new MurphyKoop2005Ice(), new MurphyKoop2005Enthalpy());
    HeatSupply contact = new HeatSupply(Double.POSITIVE_INFINITY, front_K, HeatSupply.Above.NONE);
    Outcome outcome = new PrimaryDrying(front).run(vessel, contact, pressure_Pa).outcome();
    assertThat(((Outcome.Dries) outcome).time() / HOUR).isCloseTo(hours, within(printed));
  }

  /**
   * Sample problem of food drying: water falls from 400 to 8 % of the solids in a layer of dry
   * density 470 kg/m3 that dries from both faces, chamber 40 Pa, ice front 78 Pa, surface 55 °C,
   * conductivity 0.03 W/(m K), permeability 2.5e-8 kg/(m s Pa), 2.95 MJ/kg. Printed: 1.7 h for 5
   * mm, 5.5 h for 9 mm. Source: P. Fellows, Food Processing Technology (equations read in a
   * reprint, inputs and answers from memory). The example does not ask whether ice of that pressure
   * has that temperature, so the ice of this test is one that does.
   */
  @Nested
  class AFoodLayerHeatedThroughItsOwnCake {

    private static final double CONDUCTIVITY = 0.03;
    private static final double PERMEABILITY = 2.5e-8;
    private static final double HEAT = 2.95e6;
    private static final double SURFACE_K = 328.15;
    private static final double WATER_PER_VOLUME = 470 * (4 - 0.08);

    /** Surface less front: the balance of heat and vapor, (78 − 40) b ΔH/k. */
    private static final double ACROSS_K = 38 * PERMEABILITY * HEAT / CONDUCTIVITY;

    /** 78 Pa at that front, with a slope like that of ice. */
    private record FormalIce() implements IceVaporPressure {
      private static final double SLOPE = 0.1;

      @Override
      public double pressure(double temperature_K) {
        return 78 * Math.exp(SLOPE * (temperature_K - (SURFACE_K - ACROSS_K)));
      }

      @Override
      public double logarithmicSlope(double temperature_K) {
        return SLOPE;
      }

      @Override
      public double lowestTemperature() {
        return 50;
      }

      @Override
      public double saturationTemperature(double pressure_Pa) {
        return SURFACE_K - ACROSS_K + Math.log(pressure_Pa / 78) / SLOPE;
      }
    }

    private static PrimaryDryingResult dried(double layer_m) {
      double area = 1;
      double half = layer_m / 2;
      Slab slab = new Slab(WATER_PER_VOLUME * half * area, half, area, area, 2);
      DryingVessel vessel = new DryingVessel(slab, new CakeResistance(0, 1 / PERMEABILITY, 0), 0);
      var above = new HeatSupply.Above(1e9, CONDUCTIVITY, SURFACE_K);
      HeatSupply supply = new HeatSupply(0, SURFACE_K, above);
      SublimationEnthalpy heat = temperature_K -> HEAT;
      return new PrimaryDrying(new QuasiSteadyFront(new FormalIce(), heat)).run(vessel, supply, 40);
    }

    @ParameterizedTest
    @CsvSource({"0.005, 6061, 1.7", "0.009, 19636, 5.5"})
    void takesTheTimePrinted(double layer_m, double seconds, double printedHours) {
      double time = ((Outcome.Dries) dried(layer_m).outcome()).time();
      assertThat(time).isCloseTo(seconds, within(1e-4 * seconds));
      assertThat(time / HOUR).isCloseTo(printedHours, within(0.05));
    }

    @Test
    void hasAFrontThatDoesNotDependOnDepth() {
      PrimaryDryingResult.Course course = dried(0.005).course().orElseThrow();
      assertThat(ACROSS_K).isCloseTo(93.4, within(0.05));
      assertThat(course.end().frontTemperature()).isCloseTo(SURFACE_K - ACROSS_K, within(1e-4));
      assertThat(course.warmestFront()).isCloseTo(SURFACE_K - ACROSS_K, within(1e-2));
    }
  }
}
