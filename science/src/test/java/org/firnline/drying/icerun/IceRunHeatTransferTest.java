package org.firnline.drying.icerun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.Slab;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Problem;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.firnline.matter.SublimationEnthalpy;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class IceRunHeatTransferTest {

  private static final Provenance STATED = new Provenance.Stated("test");
  private static final HeatTransfer TRUTH = new HeatTransfer(10, 1.04, 0.0231);
  private static final double AREA = 4.524e-4;
  private static final double FRONT = 230.96066158810027;

  private static final CakeResistance BARE = new CakeResistance(0, 0, 0);

  private static final Slab ICE =
      Slab.of(
          new Solution(1000, 0, 0, new PhaseDensities(917, 1590, 1000), 2.3), 3e-6, 3.801e-4, AREA);

  private static final HeatSupply SHELF = HeatSupply.fromShelf(TRUTH, 263.15, 10);

  private static Estimate about(double best, double spread) {
    return new Estimate(best, spread, STATED);
  }

  private static IceRunRecord run(Estimate loss, double temperatureDoubt, double bottom) {
    return new IceRunRecord(
        "7",
        0.003,
        loss,
        about(3.801e-4, 0.004e-4),
        FRONT,
        List.of(new IceRunMoment(0, 263.15, bottom), new IceRunMoment(7200, 263.15, bottom)),
        temperatureDoubt,
        Optional.empty());
  }

  /** 0.347 g of ice, 2.84e6 J/kg, 3.801e-4 m2, 20 K, 7200 s: 18.0 W/(m2 K). Printed digits. */
  @Test
  void meetsTheWorkedExample() {
    var evaluation = new IceRunHeatTransfer(SublimationEnthalpy.constant(2.84e6));
    IceRunResult result = evaluation.evaluate(run(about(0.347e-3, 0), 0, 243.15));
    assertThat(result.heatTransfer().best()).isCloseTo(18.0, within(0.05));
    assertThat(result.meanDrive()).isCloseTo(20, within(1e-9));
    assertThat(result.warnings()).isEmpty();
    assertThat(result.heatTransfer().provenance().label())
        .isEqualTo("measured here: weighed ice run 7");
  }

  @Nested
  class Uncertainty {

    private final IceRunHeatTransfer evaluation = new IceRunHeatTransfer();

    /** Each part alone moves the coefficient as a shift of its input by one deviation does. */
    @Test
    void addsItsPartsInSquares() {
      double best = coefficient(0.347e-3, 0, 3.801e-4);
      double byLoss = coefficient(0.350e-3, 0, 3.801e-4) - best;
      double byArea = best - coefficient(0.347e-3, 0, 3.805e-4);
      double byTemperature = best * 0.2 / 20;
      double expected =
          Math.sqrt(byLoss * byLoss + byArea * byArea + byTemperature * byTemperature);
      double spread =
          evaluation.evaluate(run(about(0.347e-3, 3e-6), 0.2, 243.15)).heatTransfer().spread();
      assertThat(spread).isCloseTo(expected, within(2e-3 * expected));
    }

    private double coefficient(double loss, double doubt, double area) {
      IceRunRecord base = run(about(loss, 0), doubt, 243.15);
      return evaluation
          .evaluate(
              new IceRunRecord(
                  "7",
                  0.003,
                  base.loss(),
                  about(area, 0),
                  FRONT,
                  base.course(),
                  0,
                  Optional.empty()))
          .heatTransfer()
          .best();
    }
  }

  /** A wall that gives a quarter of the heat is taken off again. */
  @Test
  void subtractsTheWall() {
    double wall = 278.15;
    HeatSupply walled = SHELF.withWall(4, wall);
    var forecast = SimulatedIceRun.of(ICE, new DryingVessel(ICE, BARE, 0), walled, 10, 2 * 3600);
    List<IceRunMoment> course = new ArrayList<>();
    double meanBottom = walled.temperature() - forecast.drive() / 7200;
    course.add(new IceRunMoment(0, 263.15, meanBottom));
    course.add(new IceRunMoment(7200, 263.15, meanBottom));
    var run =
        new IceRunRecord(
            "8",
            0.003,
            about(forecast.loss(), 0),
            about(AREA, 0),
            FRONT,
            course,
            0,
            Optional.of(new EdgeHeat.Side(about(4, 0.5), wall)));
    IceRunResult result = new IceRunHeatTransfer().evaluate(run);
    assertThat(result.heatTransfer().best()).isCloseTo(TRUTH.at(10), within(1e-6 * 18.4));
    double drive = run.drive(wall) / run.drive();
    assertThat(result.heatTransfer().spread()).isCloseTo(0.5 * drive, within(1e-9));
  }

  @Nested
  class Warned {

    private static List<String> codes(IceRunRecord run) {
      return new IceRunHeatTransfer().evaluate(run).warnings().stream().map(Problem::code).toList();
    }

    @Test
    void whenTheBaseMayBeBare() {
      assertThat(codes(run(about(1.2e-3, 0), 0, 243.15))).containsExactly("base-may-be-bare");
    }

    @Test
    void whenTheDriveIsSmall() {
      assertThat(codes(run(about(1e-4, 0), 0, 260.15))).containsExactly("small-drive");
    }

    @Test
    void whenTheWallExplainsTooMuch() {
      IceRunRecord base = run(about(1e-5, 0), 0, 243.15);
      var run =
          new IceRunRecord(
              "9",
              0.003,
              base.loss(),
              base.vesselArea(),
              FRONT,
              base.course(),
              0,
              Optional.of(new EdgeHeat.Side(about(4, 0), 278.15)));
      assertThat(codes(run)).containsExactly("no-shelf-heat");
    }
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> run(about(0, 0), 0, 243.15));
    assertThatIllegalArgumentException().isThrownBy(() -> run(about(0.004, 0), 0, 243.15));
    assertThatIllegalArgumentException().isThrownBy(() -> run(about(1e-3, 0), -1, 243.15));
    assertThatIllegalArgumentException().isThrownBy(() -> new IceRunMoment(0, 0, 243));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new IceRunHeatTransfer().evaluate(run(about(1e-3, 0), 0, 270)))
        .withMessageContaining("warmer than the ice");
  }
}
