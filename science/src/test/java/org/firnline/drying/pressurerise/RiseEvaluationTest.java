package org.firnline.drying.pressurerise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.firnline.drying.PressureSample;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.MurphyKoop2005Ice;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.numerics.Normal;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RiseEvaluationTest {

  private static final double FRONT = 239.15;
  private static final double RESISTANCE = 1.5e5;
  private static final RiseSetup SETUP = new RiseSetup(0.1, 258.15, 200 * 3.142e-4, 8);
  private static final RiseState STATE = new RiseState(FRONT, RESISTANCE, 0);
  private static final FrozenLayer HALF_DRY = FrozenLayer.ofIce(0.005, 2.3, FRONT);

  private static final Estimate TIGHT = Estimate.exact(0, new Provenance.Stated("leak test"));

  private static final double[] EVERY_HALF_SECOND =
      IntStream.rangeClosed(0, 60).mapToDouble(i -> i / 2.0).toArray();

  private static List<PressureSample> samples(double[] times, double[] pressures) {
    return IntStream.range(0, times.length)
        .mapToObj(i -> new PressureSample(times[i], pressures[i]))
        .toList();
  }

  private static RiseEstimate fitted(RiseModel model, double[] pressures) {
    return new RiseEvaluation(model)
        .evaluate(SETUP, samples(EVERY_HALF_SECOND, pressures), TIGHT, "1")
        .orElseThrow();
  }

  private static Optional<RiseEstimate> fittedFreely(RiseModel model, double[] pressures) {
    return new RiseEvaluation(model)
        .evaluateWithFreeLeak(SETUP, samples(EVERY_HALF_SECOND, pressures), "1");
  }

  @Nested
  class OverIceThatKeepsItsTemperature {

    /** Case L01 of an independent reference model. */
    @Test
    void risesAsTheIndependentCase() {
      double[] times = {0, 1, 2, 5, 10, 15, 25};
      double[] expected = {
        8.0,
        14.637786344362848,
        18.667326113856642,
        23.499950379993887,
        24.7778336759512,
        24.883187930516712,
        24.892589893584315
      };
      assertThat(SETUP.fillingRate(RESISTANCE)).isCloseTo(0.49912635771220354, within(1e-9 * 0.5));
      double[] pressures = new IsothermalRise().pressures(SETUP, STATE, times);
      for (int i = 0; i < times.length; i++) {
        assertThat(pressures[i]).isCloseTo(expected[i], within(1e-9 * expected[i]));
      }
    }

    /** The same with Murphy and Koop's ice, as printed: half of the last digit. */
    @Test
    void risesAsTheWorkedExample() {
      double[] times = {1, 2, 5, 10, 15, 25};
      double[] expected = {14.640, 18.671, 23.505, 24.783, 24.888, 24.898};
      double[] pressures =
          new IsothermalRise(new MurphyKoop2005Ice()).pressures(SETUP, STATE, times);
      for (int i = 0; i < times.length; i++) {
        assertThat(pressures[i]).isCloseTo(expected[i], within(6e-4));
      }
    }

    /** The worked example must give back −34.00 °C and 1.5e5 m/s. */
    @Test
    void givesItsStateBack() {
      RiseModel model = new IsothermalRise(new MurphyKoop2005Ice());
      RiseEstimate found = fitted(model, model.pressures(SETUP, STATE, EVERY_HALF_SECOND));
      assertThat(found.frontTemperature().best()).isCloseTo(FRONT, within(1e-6));
      assertThat(found.resistance().best()).isCloseTo(RESISTANCE, within(1e-5 * RESISTANCE));
      assertThat(found.misfit()).isLessThan(1e-8);
    }

    /**
     * The rise depends on P_i + X/k and k alone: another leak with slightly warmer ice rises just
     * the same, so the fit must not pretend to know the leak.
     */
    @Test
    void cannotTellALeakFromWarmerIce() {
      RiseModel model = new IsothermalRise();
      double rate = SETUP.fillingRate(RESISTANCE);
      var ice = new WagnerEtAl2011Ice();
      double warmer = ice.saturationTemperature(ice.pressure(FRONT) + 0.05 / rate);
      double[] leaky =
          model.pressures(SETUP, new RiseState(FRONT, RESISTANCE, 0.05), EVERY_HALF_SECOND);
      double[] warm =
          model.pressures(SETUP, new RiseState(warmer, RESISTANCE, 0), EVERY_HALF_SECOND);
      for (int i = 0; i < warm.length; i++) {
        assertThat(leaky[i]).isCloseTo(warm[i], within(1e-10));
      }
      assertThat(fittedFreely(model, leaky)).isEmpty();
    }

    /** A leak known to 0.01 Pa/s leaves ± 0.01/k Pa in the pressure of the ice. */
    @Test
    void carriesTheDoubtAboutTheLeak() {
      RiseModel model = new IsothermalRise();
      var leak = new Estimate(0.05, 0.01, new Provenance.Measured("leak test"));
      double[] rise =
          model.pressures(SETUP, new RiseState(FRONT, RESISTANCE, 0.05), EVERY_HALF_SECOND);
      RiseEstimate found =
          new RiseEvaluation(model)
              .evaluate(SETUP, samples(EVERY_HALF_SECOND, rise), leak, "1")
              .orElseThrow();
      assertThat(found.frontTemperature().best()).isCloseTo(FRONT, within(1e-5));
      var ice = new WagnerEtAl2011Ice();
      double expected =
          0.01
              / SETUP.fillingRate(RESISTANCE)
              / (ice.pressure(FRONT) * ice.logarithmicSlope(FRONT));
      assertThat(found.frontTemperature().spread()).isCloseTo(expected, within(0.01 * expected));
    }

    /** Gauge noise of 0.02 Pa with a fixed seed: the truth lies within four standard errors. */
    @Test
    void saysHowSureItIs() {
      RiseModel model = new IsothermalRise();
      double[] noisy = model.pressures(SETUP, STATE, EVERY_HALF_SECOND);
      SplittableRandom chance = new SplittableRandom(5);
      for (int i = 0; i < noisy.length; i++) {
        noisy[i] += 0.02 * Normal.quantile(chance.nextDouble(1e-9, 1));
      }
      RiseEstimate found = fitted(model, noisy);
      assertThat(found.misfit()).isBetween(0.01, 0.03);
      assertThat(found.frontTemperature().spread()).isBetween(1e-4, 0.1);
      assertThat(found.frontTemperature().best())
          .isCloseTo(FRONT, within(4 * found.frontTemperature().spread()));
      assertThat(found.resistance().best())
          .isCloseTo(RESISTANCE, within(4 * found.resistance().spread()));
    }
  }

  @Nested
  class OverIceThatWarms {

    private final RiseModel warming = new WarmingRise(HALF_DRY);

    private double[] isothermal() {
      return new IsothermalRise().pressures(SETUP, STATE, EVERY_HALF_SECOND);
    }

    /** Ice of boundless heat capacity cannot warm. */
    @Test
    void tendsToTheIsothermalRise() {
      RiseModel heavy = new WarmingRise(new FrozenLayer(0.005, 2.3, 1e13));
      double[] rise = heavy.pressures(SETUP, STATE, EVERY_HALF_SECOND);
      for (int i = 0; i < rise.length; i++) {
        assertThat(rise[i]).isCloseTo(isothermal()[i], within(2e-5));
      }
    }

    @Test
    void startsTheSameAndEndsHigher() {
      double[] rise = warming.pressures(SETUP, STATE, EVERY_HALF_SECOND);
      assertThat(rise[0]).isEqualTo(8);
      assertThat(rise[1]).isCloseTo(isothermal()[1], within(0.05));
      assertThat(rise[60]).isGreaterThan(isothermal()[60] + 1);
    }

    /**
     * When hardly any vapor leaves any more, all heat warms the layer: dT/dt = q/(ρ c L), and the
     * pressure follows the ice, dP/dt = p′(T) dT/dt. The vapor still given off takes a few percent.
     */
    @Test
    void warmsAsFastAsItsHeatAllows() {
      var ice = new WagnerEtAl2011Ice();
      double[] rise = warming.pressures(SETUP, STATE, new double[] {0, 60, 62});
      double flux = (ice.pressure(FRONT) - 8) / RESISTANCE;
      double heat = new MurphyKoop2005Enthalpy().specific(FRONT) * flux;
      double warmingRate = heat / (HALF_DRY.heatPerVolume() * HALF_DRY.thickness());
      double front = ice.saturationTemperature(rise[2]);
      double slope = rise[2] * ice.logarithmicSlope(front) * warmingRate;
      assertThat((rise[2] - rise[1]) / 2).isCloseTo(slope, within(0.06 * slope));
    }

    /** Finite volumes of second order: halving the cells quarters the error. */
    @Test
    void convergesWithItsCells() {
      double[] at = {25};
      double coarse = withCells(10).pressures(SETUP, STATE, at)[0];
      double used = withCells(20).pressures(SETUP, STATE, at)[0];
      double fine = withCells(40).pressures(SETUP, STATE, at)[0];
      double order = Math.log((coarse - used) / (used - fine)) / Math.log(2);
      assertThat(order).isBetween(1.7, 2.3);
      assertThat(used).isCloseTo(fine, within(1e-4 * (fine - 8)));
    }

    private static RiseModel withCells(int cells) {
      return new WarmingRise(
          HALF_DRY, new WagnerEtAl2011Ice(), new MurphyKoop2005Enthalpy(), cells);
    }

    @Test
    void givesItsStateBack() {
      RiseEstimate found = fitted(warming, warming.pressures(SETUP, STATE, EVERY_HALF_SECOND));
      assertThat(found.frontTemperature().best()).isCloseTo(FRONT, within(1e-4));
      assertThat(found.resistance().best()).isCloseTo(RESISTANCE, within(1e-4 * RESISTANCE));
    }

    /** The heat of the ice depends on the vapor alone, which sets a leak apart; without noise. */
    @Test
    void canTellALeakWhereReadingsArePerfect() {
      var leaky = new RiseState(FRONT, RESISTANCE, 0.02);
      fittedFreely(warming, warming.pressures(SETUP, leaky, EVERY_HALF_SECOND))
          .ifPresent(
              found -> {
                assertThat(found.frontTemperature().best()).isCloseTo(FRONT, within(0.01));
                assertThat(found.leak().best()).isCloseTo(0.02, within(0.002));
              });
    }

    /** Warming ice looks warmer from the start to the isothermal model, and fits it badly. */
    @Test
    void deceivesTheIsothermalModel() {
      double[] rise = warming.pressures(SETUP, STATE, EVERY_HALF_SECOND);
      RiseEstimate found = fitted(new IsothermalRise(), rise);
      assertThat(found.frontTemperature().best()).isGreaterThan(FRONT + 0.2);
      assertThat(found.misfit()).isGreaterThan(0.05);
      assertThat(fitted(warming, rise).misfit()).isLessThan(1e-4);
    }
  }

  @Nested
  class ByThePrintedEquation {

    private final RiseModel printed = new MiltonEtAl1997Rise(HALF_DRY);

    /** 8/π² = 0.8106; half of d ln p/dT is 0.0480 1/K at 253 K. */
    @Test
    void hasConstantsThatPhysicsExplains() {
      assertThat(8 / (Math.PI * Math.PI)).isCloseTo(0.811, within(5e-4));
      assertThat(new WagnerEtAl2011Ice().logarithmicSlope(253) / 2)
          .isCloseTo(0.0465, within(0.002));
    }

    /** Written out by hand for t = 25 s. */
    @Test
    void isWhatIsPrinted() {
      double front = new WagnerEtAl2011Ice().pressure(FRONT);
      double heat = new MurphyKoop2005Enthalpy().specific(FRONT) * (front - 8) / RESISTANCE;
      double across = heat * 0.005 / 2.3;
      double expected =
          front
              - (front - 8) * Math.exp(-0.49912635771220354 * 25)
              + 0.0465 * front * across * (1 - 0.811 * Math.exp(-0.114 / 0.25 * 25))
              + 0.01 * 25;
      var leaky = new RiseState(FRONT, RESISTANCE, 0.01);
      assertThat(printed.pressures(SETUP, leaky, new double[] {25})[0])
          .isCloseTo(expected, within(1e-9));
    }

    /** What a type T thermocouple of class 1 may be off, IEC 60584-1. */
    private static final double THERMOCOUPLE_K = 0.5;

    /** Its straight term stands for leak and warming together, so it is left free. */
    @ParameterizedTest
    @ValueSource(doubles = {0.003, 0.005, 0.008})
    void comesNearTheHeatEquation(double thickness) {
      var layer = FrozenLayer.ofIce(thickness, 2.3, FRONT);
      double[] truth = new WarmingRise(layer).pressures(SETUP, STATE, EVERY_HALF_SECOND);
      RiseEstimate found = fittedFreely(new MiltonEtAl1997Rise(layer), truth).orElseThrow();
      assertThat(found.frontTemperature().best()).isCloseTo(FRONT, within(THERMOCOUPLE_K));
    }
  }

  @Test
  void refusesWhatIsNoTest() {
    var evaluation = new RiseEvaluation(new IsothermalRise());
    double[] five = {0, 1, 2, 3, 4};
    double[] six = {0, 1, 2, 3, 4, 5};
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                evaluation.evaluate(SETUP, samples(five, new double[] {8, 9, 9, 9, 9}), TIGHT, "x"))
        .withMessageContaining("too few");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                evaluation.evaluate(
                    SETUP, samples(six, new double[] {8, 8, 8, 8, 8, 8}), TIGHT, "x"))
        .withMessageContaining("does not rise");
    assertThatIllegalArgumentException().isThrownBy(() -> new RiseSetup(0, 1, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FrozenLayer(0, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new PressureSample(0, 0));
  }
}
