package org.firnline.drying.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firnline.drying.dryer.CollectorRate;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporDuct;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoupledDryingTest {

  /** Agreement that the fully specified reference cases ask of a second implementation. */
  private static final double AGREEMENT = 1e-6;

  static final HeatTransfer AVERAGE_TUBING = new HeatTransfer(10, 1.04, 0.0231);
  static final CakeResistance DISACCHARIDE = new CakeResistance(4.8e4, 4.8e7, 0);

  static VesselGroup vials(double count, HeatTransfer heat, CakeResistance cake) {
    var solution = new Solution(1019.5, 0.05, 0, new PhaseDensities(917, 1590, 1000), 2.3);
    var vessel = new DryingVessel(Slab.of(solution, 3e-6, 3.801e-4, 4.524e-4), cake, 0);
    return new VesselGroup(count, vessel, ShelfHeat.of(heat));
  }

  private static VaporDuct duct(double area, double collectorPressure) {
    return new VaporDuct(area, 0.8, 293.15, 1.33, collectorPressure);
  }

  private static LoadRun run(double count, double shelf, double pressure, VaporPath path) {
    return CoupledDrying.run(
        DryingLoad.of(vials(count, AVERAGE_TUBING, DISACCHARIDE)),
        new LoadSettings(shelf, new PressureControl.Held(pressure), path));
  }

  private static void near(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(AGREEMENT * Math.abs(expected)));
  }

  /** Confirmed there by a second march in time to 3e-10. */
  @Test
  void threeThousandVialsOnASmallDuctFloatAndComeBack() {
    var path = new VaporPath(List.of(duct(0.0055, 0)), 0);
    LoadRun run = run(3000, 268.15, 8, path);
    near(((LoadOutcome.Dries) run.outcome()).time(), 38714.10017290185);
    LoadState start = run.course().get(0);
    near(start.pressure(), 36.14689137764716);
    near(start.totalRate(), 0.0002908420234874789);
    near(path.rate(start.pressure()), 0.000290842023487478);
    near(run.course().get(run.course().size() - 1).pressure(), 23.55935972128221);
    near(run.highestPressure().orElseThrow(), 36.14689137764716);
    near(run.warmest().orElseThrow(), 252.82614888352944);
    near(run.ice(), 8.716725000000002);
    assertThat(run.rootsAtStart()).hasSize(1);
    near(run.rootsAtStart().get(0).pressure(), 36.14689137764704);
    assertThat(run.warning()).isEmpty();
  }

  /** A collector of constant rate, overrun: confirmed there by a second march to 1.3e-8. */
  @Test
  void anOverrunCollectorLetsThePressureRiseTenfold() {
    double floor = new WagnerEtAl2011Ice().pressure(203.14999999999998);
    var path =
        new VaporPath(
            List.of(duct(0.030000000000000002, floor), new CollectorRate(6.944444444444444e-05)),
            floor);
    LoadRun run = run(1500, 259.15, 6, path);
    near(((LoadOutcome.Dries) run.outcome()).time(), 71382.88713280983);
    near(run.course().get(0).pressure(), 71.96715468297725);
    near(run.course().get(0).totalRate(), 6.944444444444467e-05);
    near(run.course().get(run.course().size() - 1).pressure(), 6);
    near(run.warmest().orElseThrow(), 251.5291108000159);
    near(path.floor(), 0.2617287104154929);
  }

  @Nested
  class ThreeMeetings {

    private final VaporPath path =
        new VaporPath(
            List.of(new MeasuredLine(2.5e-5, 0), new CollectorRate(0.00011111111111111112)), 0);
    private final DryingLoad load =
        DryingLoad.of(vials(1000, new HeatTransfer(3, 1, 0.004), new CakeResistance(5e3, 1e6, 0)));
    private final LoadMoment start = LoadMoment.start(load, 268.15);

    @Test
    void areAllFoundWithTheirStability() {
      List<PressureRoot> roots = start.roots(path);
      assertThat(roots).extracting(PressureRoot::stable).containsExactly(true, false, true);
      near(roots.get(0).pressure(), 1.3989810625809984);
      near(roots.get(1).pressure(), 29.122066934415614);
      near(roots.get(2).pressure(), 165.48325434375232);
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "5, 5", "10, 10", "20, 20", "50, 165.48325434375386"})
    void aControlledDryerSitsAtTheFirstItCanHold(double setPoint, double pressure) {
      near(start.pressure(new PressureControl.Held(setPoint), path).orElseThrow(), pressure);
    }

    @Test
    void anUncontrolledDryerSitsAtTheHighest() {
      near(start.pressure(new PressureControl.Floating(), path).orElseThrow(), 165.48325434375369);
    }

    @Test
    void areWarnedOf() {
      var settings = new LoadSettings(268.15, new PressureControl.Held(5), path);
      assertThat(CoupledDrying.run(load, settings).warning()).isPresent();
    }
  }

  @Nested
  class Laws {

    /** A dryer that never limits leaves each group to itself. */
    @Test
    void withoutLimitsEachGroupDriesAsIfAlone() {
      var warm = vials(30, AVERAGE_TUBING.times(1.3), DISACCHARIDE);
      var slow = vials(70, AVERAGE_TUBING, DISACCHARIDE.times(1.2));
      var settings = new LoadSettings(253.15, new PressureControl.Held(10), VaporPath.UNLIMITED);
      LoadRun run = CoupledDrying.run(new DryingLoad(List.of(warm, slow)), settings);
      near(run.groupEnds().get(0), alone(warm));
      near(run.groupEnds().get(1), alone(slow));
    }

    private static double alone(VesselGroup group) {
      return FastPrimaryDrying.run(group.vessel(), group.heat().at(253.15, 10), 10).time();
    }

    /** Two halves of a load are the load. */
    @Test
    void dividingAGroupChangesNothing() {
      var path = new VaporPath(List.of(duct(0.0055, 0)), 0);
      var settings = new LoadSettings(268.15, new PressureControl.Held(8), path);
      var half = vials(1500, AVERAGE_TUBING, DISACCHARIDE);
      LoadRun halves = CoupledDrying.run(new DryingLoad(List.of(half, half)), settings);
      LoadRun whole = run(3000, 268.15, 8, path);
      near(halves.groupEnds().get(1), whole.groupEnds().get(0));
    }

    @Test
    void aDryerThatCarriesNothingIsOverloadedAtOnce() {
      var path = new VaporPath(List.of(new CollectorRate(1e-9)), 0);
      assertThat(run(1000, 290, 10, path).outcome()).isEqualTo(new LoadOutcome.Overloaded(0));
    }

    @Test
    void aColdShelfSublimesNothing() {
      LoadRun run = run(10, 228.15, 10, VaporPath.UNLIMITED);
      assertThat(run.outcome()).isEqualTo(new LoadOutcome.NothingSublimes());
      assertThat(run.groupEnds()).containsExactly(Double.POSITIVE_INFINITY);
    }

    @Test
    void aSetPointAboveTheTriplePointIsNamed() {
      assertThat(run(10, 253.15, 700, VaporPath.UNLIMITED).outcome())
          .isEqualTo(new LoadOutcome.AboveTriplePoint());
    }

    /** The same vial, the same moment as the single-vessel quadrature says. */
    @Test
    void meltsWhereASingleVialMelts() {
      var cake = new CakeResistance(4.8e4, 4e8, 0);
      LoadRun run =
          CoupledDrying.run(
              DryingLoad.of(vials(10, AVERAGE_TUBING, cake)),
              new LoadSettings(298.15, new PressureControl.Held(20), VaporPath.UNLIMITED));
      near(((LoadOutcome.Melts) run.outcome()).time(), 14992.149521194635);
    }
  }
}
