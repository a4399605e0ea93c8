package org.firnline.drying.primary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.evidence.InvalidInputException;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LimitsTest {

  private static final WagnerEtAl2011Ice ICE = new WagnerEtAl2011Ice();
  private static final MurphyKoop2005Enthalpy ENTHALPY = new MurphyKoop2005Enthalpy();
  private static final Slab VIAL = new Slab(2.9e-3, 8.6e-3, 3.801e-4, 4.524e-4, 2.3);
  private static final CakeResistance CAKE = new CakeResistance(4.8e4, 4.8e7, 0);

  private final PrimaryDrying drying = new PrimaryDrying();
  private final QuasiSteadyFront front = new QuasiSteadyFront();

  private static HeatSupply shelf(double coefficient, double kelvin) {
    return new HeatSupply(coefficient, kelvin, HeatSupply.Above.NONE);
  }

  private static DryingVessel vessel(CakeResistance cake) {
    return new DryingVessel(VIAL, cake, 0);
  }

  private static void near(double actual, double expected, double relative) {
    assertThat(actual).isCloseTo(expected, within(relative * Math.abs(expected)));
  }

  @Nested
  class NothingToDry {

    @Test
    void solidsThatBindAllWaterAreRefused() {
      assertThatThrownBy(() -> new Solution(1100, 0.7, 0.45, PhaseDensities.TYPICAL, 2.3))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("leave no ice");
    }

    @Test
    void aShellThatFillsItsFlaskIsRefused() {
      var solution = Solution.typical(1020, 0.05);
      assertThatThrownBy(() -> Shell.of(solution, 2e-3, 0.05, 0.15, Shell.Glass.NONE))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("fills the whole flask wall");
    }
  }

  @Nested
  class NoDrivingForce {

    @Test
    void exactlyAtTheThresholdNothingSublimes() {
      double threshold = ICE.saturationTemperature(10);
      var result = drying.run(vessel(CAKE), shelf(20, threshold), 10);
      assertThat(result.outcome()).isEqualTo(new Outcome.NothingSublimes(threshold));
    }

    /** Just above it the rate is that of a small temperature difference, to first order. */
    @Test
    void justAboveTheThresholdTheRateIsLinearInTheExcess() {
      double threshold = ICE.saturationTemperature(10);
      double excess = 1e-3;
      double slope = ICE.pressure(threshold) * ICE.logarithmicSlope(threshold);
      double resistance = 4.8e4 / 3.801e-4;
      double thermal = 1 / (20 * 4.524e-4) + 8.6e-3 / (2.3 * 3.801e-4);
      double linear =
          excess * slope / (resistance + slope * thermal * ENTHALPY.specific(threshold));
      var state = front.at(vessel(CAKE), shelf(20, threshold + excess), 10, 0);
      near(state.rate(), linear, 1e-3);
    }

    @Test
    void withoutAnySourceTheVesselKeepsTheTemperatureItIsGiven() {
      var result = drying.run(vessel(CAKE), shelf(0, 253.15), 10);
      assertThat(result.outcome().status()).isIn("no-sublimation", "dries");
      assertThat(front.at(vessel(CAKE), shelf(0, 253.15), 10, 0).rate()).isZero();
    }
  }

  @Nested
  class Resistance {

    /** Bare ice sits at the saturation temperature; heat alone sets the rate. */
    @Test
    void ofZeroLeavesTheFrontAtSaturation() {
      var state = front.at(vessel(new CakeResistance(0, 0, 0)), shelf(20, 253.15), 10, 0);
      double saturation = ICE.saturationTemperature(10);
      double thermal = 1 / (20 * 4.524e-4) + 8.6e-3 / (2.3 * 3.801e-4);
      near(state.frontTemperature(), saturation, 1e-12);
      near(state.rate(), (253.15 - saturation) / thermal / ENTHALPY.specific(saturation), 1e-9);
    }

    /** A cake that lets nothing through leaves the front at shelf temperature: ṁ = (p − P)/R̂. */
    @Test
    void withoutBoundLeavesTheFrontAtTheSource() {
      double huge = 1e13;
      var state = front.at(vessel(new CakeResistance(huge, 0, 0)), shelf(20, 253.15), 10, 0);
      near(state.frontTemperature(), 253.15, 1e-8);
      near(state.rate(), (ICE.pressure(253.15) - 10) * 3.801e-4 / huge, 1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-3, 1})
    void goesSmoothlyToZero(double tiny) {
      double bare =
          drying
              .run(vessel(new CakeResistance(0, 0, 0)), shelf(20, 253.15), 10)
              .dryingTime()
              .orElseThrow();
      double nearlyBare =
          drying
              .run(vessel(new CakeResistance(tiny, 0, 0)), shelf(20, 253.15), 10)
              .dryingTime()
              .orElseThrow();
      near(nearlyBare, bare, 1e-4 * tiny + 1e-9);
    }
  }

  @Nested
  class Conductance {

    /** Perfect contact and a perfect conductor: t = μ′(R_0 L + A_1 L²/2)/(p(T*) − P). */
    @Test
    void withoutBoundGivesTheClosedForm() {
      var slab = new Slab(2.9e-3, 8.6e-3, 3.801e-4, 4.524e-4, Double.POSITIVE_INFINITY);
      var perfect = new DryingVessel(slab, CAKE, 0);
      double depth = slab.thickness();
      double time =
          slab.iceMass()
              / (depth * slab.productArea())
              * (4.8e4 * depth + 4.8e7 * depth * depth / 2)
              / (ICE.pressure(243.15) - 8);
      var supply = shelf(Double.POSITIVE_INFINITY, 243.15);
      near(drying.run(perfect, supply, 8).dryingTime().orElseThrow(), time, 1e-9);
      near(FastPrimaryDrying.run(perfect, supply, 8).time(), time, 1e-7);
    }

    /** Heat from above through a cake without resistance to radiation: only the cake counts. */
    @Test
    void fromAboveWithoutBoundStartsAtTheSurfaceTemperature() {
      var above = new HeatSupply.Above(Double.POSITIVE_INFINITY, 0.04, 260);
      var supply = new HeatSupply(0, 273.15, above);
      var state = front.at(vessel(CAKE), supply, 10, 4e-3);
      double conductance = 3.801e-4 * 0.04 / 4e-3;
      near(
          state.rate() * ENTHALPY.specific(state.frontTemperature()),
          conductance * (260 - state.frontTemperature()),
          1e-9);
    }

    @Test
    void ofAGlassWallWithoutThicknessIsThatOfNoGlass() {
      var solution = Solution.typical(1020, 0.05);
      var bare = Shell.of(solution, 4e-4, 0.055, 0.15, Shell.Glass.NONE);
      var thin = Shell.of(solution, 4e-4, 0.055, 0.15, new Shell.Glass(1e-9, 1.1));
      near(thin.outerConductance(7, 1e-3), bare.outerConductance(7, 1e-3), 1e-6);
    }
  }

  @Nested
  class TheLastIce {

    /** With no ice left below it the front is the bottom. */
    @Test
    void isAsWarmAsTheBottom() {
      var state = front.at(vessel(CAKE), shelf(20, 253.15), 10, VIAL.thickness());
      assertThat(state.bottomTemperature()).isEqualTo(state.frontTemperature());
    }

    @Test
    void ofAMicrometerIsNoJump() {
      var before = front.at(vessel(CAKE), shelf(20, 253.15), 10, VIAL.thickness() - 1e-6);
      var last = front.at(vessel(CAKE), shelf(20, 253.15), 10, VIAL.thickness());
      near(before.rate(), last.rate(), 1e-3);
    }

    /** A micrometer of product dries in a time proportional to it. */
    @Test
    void aloneDriesAtTheRateOfItsBareSurface() {
      var film = new Slab(3.4e-7, 1e-6, 3.801e-4, 4.524e-4, 2.3);
      var vessel = new DryingVessel(film, CAKE, 0);
      double rate = front.at(vessel, shelf(20, 253.15), 10, 0).rate();
      near(
          drying.run(vessel, shelf(20, 253.15), 10).dryingTime().orElseThrow(),
          film.iceMass() / rate,
          2e-3);
    }
  }

  @Nested
  class AShelfAboveMelting {

    @Test
    void meltsAtOnceUnderAVeryDenseCake() {
      var result = drying.run(vessel(new CakeResistance(1e9, 0, 0)), shelf(20, 300), 100);
      assertThat(result.outcome()).isEqualTo(new Outcome.Melts(0, 0));
      assertThat(result.dryingTime()).isEmpty();
    }

    @Test
    void stillDriesWhereSublimationCoolsEnough() {
      var result = drying.run(vessel(new CakeResistance(1e4, 0, 0)), shelf(5, 300), 10);
      assertThat(result.outcome().status()).isEqualTo("dries");
    }

    @ParameterizedTest
    @ValueSource(doubles = {611.658, 1e5})
    void isNamedWhereThePressureForbidsSublimation(double pressure) {
      assertThat(drying.run(vessel(CAKE), shelf(20, 270), pressure).outcome())
          .isEqualTo(new Outcome.AboveTriplePoint());
    }
  }

  @Nested
  class HeatFromAboveOnly {

    /** As the cake grows its surface source is left behind; the wall source alone is too cold. */
    @Test
    void stallsWhereTheMixedSourceMeetsTheThreshold() {
      var above = new HeatSupply.Above(10, 0.03, 300);
      var supply = new HeatSupply(20, 215, above);
      var result = drying.run(vessel(CAKE), supply, 10);
      var stalls = (Outcome.Stalls) result.outcome();
      double threshold = ICE.saturationTemperature(10);
      near(front.effectiveSource(vessel(CAKE), supply, stalls.depth()), threshold, 1e-9);
      assertThat(result.dryingTime()).contains(Double.POSITIVE_INFINITY);
    }
  }

  @Nested
  class Directions {

    @Property(tries = 100)
    void aWarmerShelfDriesFaster(@ForAll @DoubleRange(min = 240, max = 268) double kelvin) {
      assertThat(time(CAKE, 20, kelvin + 1, 10)).isLessThan(time(CAKE, 20, kelvin, 10));
    }

    @Property(tries = 100)
    void aDenserCakeDriesSlower(@ForAll @DoubleRange(min = 0.2, max = 3) double factor) {
      assertThat(time(CAKE.times(factor * 1.1), 20, 253, 10))
          .isGreaterThan(time(CAKE.times(factor), 20, 253, 10));
    }

    /** At the same heat transfer a lower pressure is always faster. */
    @Property(tries = 100)
    void aLowerPressureDriesFaster(@ForAll @DoubleRange(min = 1, max = 30) double pressure) {
      assertThat(time(CAKE, 20, 253, pressure)).isLessThan(time(CAKE, 20, 253, pressure * 1.1));
    }

    private double time(CakeResistance cake, double coefficient, double kelvin, double pressure) {
      return new PrimaryDrying()
          .run(vessel(cake), shelf(coefficient, kelvin), pressure)
          .dryingTime()
          .orElseThrow();
    }
  }

  /** K_v(P) levels off at a + b/c. */
  @Test
  void heatTransferLevelsOff() {
    near(new HeatTransfer(10, 1.04, 0.0231).at(1e9), 10 + 1.04 / 0.0231, 1e-6);
  }
}
