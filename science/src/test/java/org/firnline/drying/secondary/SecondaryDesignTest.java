package org.firnline.drying.secondary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.drying.recipe.Track;
import org.firnline.matter.Humidity;
import org.firnline.matter.solute.GordonTaylor1952;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Equilibrium with humidity, the design of a program, and laws of secondary drying. */
class SecondaryDesignTest {

  private static final Desorption KINETICS = new Desorption(670.179127262, 40_000, 0.003);
  private static final GordonTaylor1952 SUCROSE = new GordonTaylor1952(335.15, 4.7, 138.15);

  private static MoistSolid solid(double moisture) {
    return new MoistSolid(moisture, KINETICS);
  }

  /** −20 to 40 °C at 0.2 °C/min. */
  private static SecondaryDrying slowRamp(double moisture) {
    return new SecondaryDrying(
        KINETICS, moisture, new WarmingProgram(253.15, 313.15, 0.2 / 60).track());
  }

  @Nested
  class Laws {

    /** Worked example: 5e-5 1/s at 20 °C and 40 kJ/mol give 1.42615e-4 1/s at 40 °C. */
    @Test
    void rateGoesThroughTheMeasuredOne() {
      var kinetics =
          Desorption.through(5e-5, 293.15, 40_000, new EquilibriumMoisture.Constant(0.003));
      assertThat(kinetics.rate(313.15)).isCloseTo(1.42615e-4, within(5e-10));
    }

    @Property(tries = 100)
    void theTimeToAMoistureIsWhenItIsReached(
        @ForAll @DoubleRange(min = 0.004, max = 0.19) double target) {
      double time = slowRamp(0.2).timeTo(target).orElseThrow();
      assertThat(slowRamp(0.2).moisture(time)).isCloseTo(target, within(1e-10));
    }

    @Property(tries = 100)
    void dryingNeverWetsWhatIsAboveEquilibrium(
        @ForAll @DoubleRange(min = 0, max = 40_000) double time) {
      double now = slowRamp(0.1).moisture(time);
      double later = slowRamp(0.1).moisture(time + 60);
      assertThat(later).isLessThanOrEqualTo(now).isGreaterThanOrEqualTo(0.003);
    }

    /** A step to the hold temperature is the limit of ever faster ramps. */
    @Test
    void aStepIsTheLimitOfRamps() {
      var step =
          Track.through(
              List.of(
                  new Track.Point(0, 253.15),
                  new Track.Point(100, 253.15),
                  new Track.Point(100, 313.15)));
      var fast =
          Track.through(
              List.of(
                  new Track.Point(0, 253.15),
                  new Track.Point(100, 253.15),
                  new Track.Point(100.001, 313.15)));
      double expected = new SecondaryDrying(KINETICS, 0.08, fast).moisture(5000);
      assertThat(new SecondaryDrying(KINETICS, 0.08, step).moisture(5000))
          .isCloseTo(expected, within(1e-8));
    }
  }

  @Nested
  class EquilibriumWithHumidity {

    /** Brunauer, Emmett and Teller with c = 1, k = 1 reduces to C_m a/(1 − a). */
    @Test
    void meetsClosedForms() {
      assertThat(new GabIsotherm(0.05, 1, 1).moisture(0.5)).isCloseTo(0.05, within(1e-15));
      assertThat(new GabIsotherm(0.05, 10, 1).moisture(0.5))
          .isCloseTo(0.1 * 10 / 11, within(1e-15));
      assertThat(new GabIsotherm(0.05, 10, 0.9).moisture(0)).isZero();
    }

    /** The monolayer is full at a = 1/(k (1 + √c)). */
    @Property
    void fillsTheMonolayerWhereTheTheorySays(
        @ForAll @DoubleRange(min = 1, max = 100) double binding,
        @ForAll @DoubleRange(min = 0.5, max = 1) double multilayer) {
      double activity = 1 / (multilayer * (1 + Math.sqrt(binding)));
      assertThat(new GabIsotherm(0.06, binding, multilayer).moisture(activity))
          .isCloseTo(0.06, within(1e-12));
    }

    /** Above 0 °C activity refers to the liquid: 23.4 Pa at 20 °C is 1 % humidity. */
    @Test
    void comparesWithLiquidWater() {
      var isotherm = new GabIsotherm(0.05, 12, 0.95);
      assertThat(isotherm.under(23.391937, 293.15))
          .isCloseTo(isotherm.moisture(0.01), within(1e-9));
      assertThat(new EquilibriumMoisture.UnderVapor(isotherm, 10).at(313.15))
          .isCloseTo(isotherm.moisture(10 / new Humidity().overLiquid(313.15)), within(1e-15));
    }

    @Test
    void fallsAsTheSolidWarms() {
      var equilibrium = new EquilibriumMoisture.UnderVapor(new GabIsotherm(0.05, 12, 0.95), 10);
      assertThat(equilibrium.at(313.15)).isLessThan(equilibrium.at(263.15));
      var drying =
          new SecondaryDrying(
              new Desorption(670.179127262, 40_000, equilibrium),
              0.08,
              new WarmingProgram(263.15, 313.15, 0.2 / 60).track());
      assertThat(drying.moisture(1e7)).isCloseTo(equilibrium.at(313.15), within(1e-12));
      double reached = drying.timeTo(0.02).orElseThrow();
      assertThat(drying.moisture(reached)).isCloseTo(0.02, within(1e-10));
      assertThat(drying.timeTo(equilibrium.at(313.15))).isEmpty();
    }

    /** Where vapor is absent the equilibrium is 0, and marching must meet the closed form. */
    @Test
    void meetsTheClosedFormWithoutVapor() {
      var dry = new EquilibriumMoisture.UnderVapor(new GabIsotherm(0.05, 12, 0.95), 0);
      var ramp = new WarmingProgram(253.15, 313.15, 0.2 / 60).track();
      var marched = new SecondaryDrying(new Desorption(670.18, 40_000, dry), 0.08, ramp);
      var closed = new SecondaryDrying(new Desorption(670.18, 40_000, 0), 0.08, ramp);
      for (double time : new double[] {1, 9000, 18_000, 30_000}) {
        assertThat(marched.moisture(time)).isCloseTo(closed.moisture(time), within(1e-11));
      }
    }

    @Test
    void refusesWhatWouldCondense() {
      var isotherm = new GabIsotherm(0.05, 12, 0.95);
      assertThatIllegalArgumentException().isThrownBy(() -> isotherm.under(100, 233.15));
      assertThatIllegalArgumentException().isThrownBy(() -> isotherm.moisture(-0.1));
      assertThatIllegalArgumentException().isThrownBy(() -> new GabIsotherm(0, 1, 1));
      assertThatIllegalArgumentException().isThrownBy(() -> new GabIsotherm(0.05, 1, 1.1));
    }
  }

  @Nested
  class ADesign {

    private final SecondaryDesigner designer = new SecondaryDesigner();

    private SecondaryDemand demand(double start, double margin, double target) {
      return new SecondaryDemand(start, 313.15, 1.0 / 60, 0.005 / 60, target, margin);
    }

    @Test
    void takesTheFastestRampThatKeepsTheGlass() {
      MoistSolid wettest = solid(0.06);
      MoistSolid slowest = new MoistSolid(0.06, KINETICS.times(0.8));
      var found =
          (SecondaryDesign.Found)
              designer.design(demand(263.15, 2, 0.01), wettest, slowest, SUCROSE);
      assertThat(found.margin().margin()).isCloseTo(2, within(1e-6));
      WarmingProgram program = found.program();
      WarmingProgram faster = new WarmingProgram(263.15, 313.15, program.ramp() * 1.01);
      assertThat(wettest.along(faster.track()).leastMargin(SUCROSE, faster.rampTime()).margin())
          .isLessThan(2);
      assertThat(slowest.along(program.track()).moisture(found.totalTime()))
          .isCloseTo(0.01, within(1e-9));
    }

    @Test
    void takesTheDryersRampWhereTheGlassIsHard() {
      var trehalose = new GordonTaylor1952(379.15, 6.2);
      var found =
          (SecondaryDesign.Found)
              designer.design(demand(263.15, 2, 0.01), solid(0.02), solid(0.02), trehalose);
      assertThat(found.program().ramp()).isEqualTo(1.0 / 60);
    }

    @Test
    void saysThatAWetStartIsTooSoft() {
      var design = designer.design(demand(263.15, 2, 0.01), solid(0.2), solid(0.2), SUCROSE);
      assertThat(design).isInstanceOf(SecondaryDesign.TooSoft.class);
      assertThat(((SecondaryDesign.TooSoft) design).margin().margin()).isNegative();
    }

    @Test
    void saysThatATargetIsUnreachable() {
      assertThat(designer.design(demand(263.15, 0, 0.002), solid(0.03), solid(0.03), SUCROSE))
          .isEqualTo(new SecondaryDesign.TargetUnreachable(0.003));
    }
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Desorption(0, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Desorption(1, -1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Desorption(1, 1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> slowRamp(-0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new WarmingProgram(0, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new SecondaryDemand(0, 1, 1, 1, 0.01, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SecondaryDemand(250, 300, 1, 2, 0.01, 0));
  }
}
