package org.firnline.learning.icerun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.icerun.SimulatedIceRun;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.Slab;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Problem;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.firnline.matter.SublimationEnthalpy;
import org.firnline.numerics.SeededUniform;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class IceRunEvaluationTest {

  private static final Provenance STATED = new Provenance.Stated("test");
  private static final Balance FINE = new Balance(1e-7, 0);

  private static Estimate about(double best, double spread) {
    return new Estimate(best, spread, STATED);
  }

  private static IceRun run(List<WeighedVessel> vessels, Balance balance) {
    return new IceRun(
        "7",
        "6R",
        about(10, 0.1),
        about(7200, 0),
        about(263.15, 0.3),
        about(243.15, 0.4),
        about(3.801e-4, 0),
        0.002,
        balance,
        vessels);
  }

  private static WeighedVessel vessel(String name, String position, double loss) {
    return new WeighedVessel(name, position, 0.012, 0.012 - loss);
  }

  /** 0.347 g of ice, 2.84e6 J/kg, 3.801e-4 m2, 20 K, 7200 s: 18.0 W/(m2 K). Printed digits. */
  @Test
  void meetsTheWorkedExample() {
    IceRunAnswer answer =
        new IceRunEvaluation(SublimationEnthalpy.constant(2.84e6))
            .evaluate(run(List.of(vessel("1", "center", 0.347e-3)), FINE));
    PositionHeatTransfer center = answer.positions().get(0);
    assertThat(center.budget().value()).isCloseTo(18.0, within(0.05));
    assertThat(center.estimate("7").provenance().label())
        .isEqualTo("measured here: weighed ice run 7, center");
    assertThat(answer.warnings()).extracting(Problem::code).containsExactly("single-vessel");
  }

  /** With the temperatures alone in doubt, u(K)/K = hypot(0.3, 0.4)/20 = 2.5 %. */
  @Test
  void combinesTheTemperaturesByTheLawOfPropagation() {
    Budget3 three = new Budget3(0.347e-3, 0.347e-3, 0.347e-3);
    PositionHeatTransfer center = three.evaluate(new Balance(0, 0)).positions().get(0);
    assertThat(center.budget().relative()).isCloseTo(0.025, within(1e-5));
    assertThat(center.betweenVessels()).isZero();
  }

  private record Budget3(double first, double second, double third) {
    IceRunAnswer evaluate(Balance balance) {
      return new IceRunEvaluation()
          .evaluate(
              run(
                  List.of(
                      vessel("1", "center", first),
                      vessel("2", "center", second),
                      vessel("3", "center", third)),
                  balance));
    }
  }

  @Nested
  class Scatter {

    /** Losses 0.330, 0.350, 0.370 g: standard deviation 0.020 g, of the mean 0.020/√3. */
    @Test
    void isOfTypeAWithItsDegreesOfFreedom() {
      PositionHeatTransfer center =
          new Budget3(0.330e-3, 0.350e-3, 0.370e-3).evaluate(FINE).positions().get(0);
      var loss = center.budget().parts().get(0);
      assertThat(loss.input().uncertainty()).isCloseTo(0.020e-3 / Math.sqrt(3), within(1e-12));
      assertThat(loss.input().freedom()).isEqualTo(2);
      assertThat(center.betweenVessels()).isCloseTo(0.020 / 0.350, within(1e-6));
    }

    /** A digit of 10 mg: u of a loss is √2 · 10/√12 = 4.08 mg, more than the scatter. */
    @Test
    void isNeverBelowWhatTheBalanceGives() {
      IceRunAnswer answer =
          new Budget3(0.349e-3, 0.350e-3, 0.351e-3).evaluate(new Balance(10e-6, 0));
      PositionHeatTransfer center = answer.positions().get(0);
      var loss = center.budget().parts().get(0);
      assertThat(loss.input().uncertainty())
          .isCloseTo(4.0825e-6 / Math.sqrt(3), within(1e-4 * 4.0825e-6));
      assertThat(loss.input().freedom()).isInfinite();
      assertThat(center.betweenVessels()).isZero();
    }

    /** 3000 vessels with a spread of 6 %: it comes back within four deviations of 0.00102 each. */
    @Test
    void betweenVesselsIsRecoveredWithWeighingNoiseTakenOff() {
      SeededUniform chance = new SeededUniform(8);
      Balance coarse = new Balance(0, 8e-6);
      List<WeighedVessel> vessels = new ArrayList<>();
      for (int i = 0; i < 3_000; i++) {
        double own = 0.347e-3 * (1 + 0.06 * chance.normalAt(i, 0, 0));
        double seen = own + coarse.ofLoss() * chance.normalAt(i, 1, 0);
        vessels.add(vessel("v" + i, "center", seen));
      }
      var center = new IceRunEvaluation().evaluate(run(vessels, coarse)).positions().get(0);
      assertThat(center.betweenVessels()).isCloseTo(0.06, within(0.0041));
    }
  }

  /** A simulated ice run gives back the coefficient it was made with. */
  @Test
  void recoversTheCoefficientOfASimulatedRun() {
    HeatTransfer truth = new HeatTransfer(10, 1.04, 0.0231);
    double area = 4.524e-4;
    Slab ice =
        Slab.of(
            new Solution(1000, 0, 0, new PhaseDensities(917, 1590, 1000), 2.3),
            3e-6,
            3.801e-4,
            area);
    var forecast =
        SimulatedIceRun.of(
            ice,
            new DryingVessel(ice, new CakeResistance(0, 0, 0), 0),
            HeatSupply.fromShelf(truth, 263.15, 10),
            10,
            7200);
    IceRun run =
        new IceRun(
            "8",
            "10R",
            about(10, 0),
            about(7200, 0),
            about(263.15, 0),
            about(263.15 - forecast.drive() / 7200, 0),
            about(area, 0),
            0.003,
            FINE,
            List.of(vessel("1", "center", forecast.loss())));
    var center = new IceRunEvaluation().evaluate(run).positions().get(0);
    assertThat(center.budget().value()).isCloseTo(truth.at(10), within(1e-4 * truth.at(10)));
  }

  @Test
  void keepsPositionsApartInTheOrderOfTheSheet() {
    IceRunAnswer answer =
        new IceRunEvaluation()
            .evaluate(
                run(
                    List.of(
                        vessel("1", "corner", 0.5e-3),
                        vessel("2", "center", 0.3e-3),
                        vessel("3", "corner", 0.52e-3),
                        vessel("4", "center", 0.31e-3)),
                    FINE));
    assertThat(answer.positions())
        .extracting(PositionHeatTransfer::position)
        .containsExactly("corner", "center");
    assertThat(answer.positions().get(0).vessels().get(1).heatTransfer())
        .isGreaterThan(answer.positions().get(0).vessels().get(0).heatTransfer());
  }

  @Test
  void warnsOfBareBasesCoarseBalancesAndSmallDrives() {
    IceRun run =
        new IceRun(
            "9",
            "6R",
            about(10, 0),
            about(7200, 0),
            about(246.15, 0),
            about(243.15, 0),
            about(3.801e-4, 0),
            0.002,
            new Balance(0, 60e-6),
            List.of(vessel("1", "edge", 0.8e-3), vessel("2", "edge", 0.79e-3)));
    assertThat(new IceRunEvaluation().evaluate(run).warnings())
        .extracting(Problem::code)
        .containsExactly("base-may-be-bare", "loss-near-the-balance", "small-drive");
  }

  @Nested
  class Refuses {

    @Test
    void vesselsThatGainedMass() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new WeighedVessel("4", "edge", 0.012, 0.013))
          .withMessageContaining("vessel 4");
    }

    @Test
    void moreLossThanIce() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> run(List.of(vessel("4", "edge", 0.003)), FINE))
          .withMessageContaining("vessel 4");
    }

    @Test
    void aShelfColderThanTheIceAndNoVessels() {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> run(List.of(), FINE))
          .withMessageContaining("no vessel");
      assertThatIllegalArgumentException()
          .isThrownBy(
              () ->
                  new IceRun(
                      "9",
                      "6R",
                      about(10, 0),
                      about(7200, 0),
                      about(240, 0),
                      about(243.15, 0),
                      about(3.801e-4, 0),
                      0.002,
                      FINE,
                      List.of(vessel("1", "edge", 0.0008))))
          .withMessageContaining("not warmer");
      assertThatIllegalArgumentException().isThrownBy(() -> new Balance(-1, 0));
    }
  }
}
