package org.firnline.drying.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.EdgeHeat;
import org.firnline.lab.Flask;
import org.firnline.lab.HeatFromAbove;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.LoadItem;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Piece;
import org.firnline.lab.Product;
import org.firnline.lab.Solution;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ResolvedLoadTest {

  /** Agreement that the fully specified reference cases ask of a second implementation. */
  private static final double AGREEMENT = 1e-6;

  private static final double ROOM = 295.15;

  private static Estimate exact(double value) {
    return Estimate.exact(
        value, new Provenance.Published(new Source("invented", Source.Status.DERIVED)));
  }

  private static LoadItem item(
      Vessel vessel, Solution solution, CakeResistance cake, double fill, int count) {
    var critical = new CriticalTemperature(CriticalTemperature.Kind.COLLAPSE, exact(242));
    return new LoadItem(
        new Product("invented", solution, cake, exact(1), critical), vessel, fill, count, 0.3);
  }

  private static Solution solution(double density, double solids, double unfrozen) {
    return new Solution(density, solids, unfrozen, new PhaseDensities(917, 1590, 1000), 2.3);
  }

  private static double dryingTime(VesselGroup group, double shelf, double pressure) {
    return FastPrimaryDrying.run(group.vessel(), group.heat().at(shelf, pressure), pressure).time();
  }

  private static void near(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(AGREEMENT * expected));
  }

  @Nested
  class Vials {

    private final LoadItem item =
        item(
            Iso8362Vial.R10.nominal(),
            solution(1019.5, 0.05, 0),
            new CakeResistance(4.8e4, 4.8e7, 0),
            3e-6,
            100);

    @Test
    void areOneGroupWhereNobodyKnowsTheWalls() {
      List<VesselGroup> groups = ResolvedLoad.groups(item, ROOM);
      assertThat(groups).hasSize(1);
      assertThat(groups.get(0).count()).isEqualTo(100);
    }

    @Test
    void atAnEdgeGetTheRatioAtThePressureOfItsMeasurement() {
      var edge = new EdgeHeat.Ratio(exact(1.3), 10);
      List<VesselGroup> groups = ResolvedLoad.groups(item, edge, ROOM);
      assertThat(groups).extracting(VesselGroup::count).containsExactly(70.0, 30.0);
      assertThat(ratio(groups, 10)).isCloseTo(1.3, within(1e-12));
      assertThat(ratio(groups, 30)).isLessThan(1.3);
    }

    private static double ratio(List<VesselGroup> groups, double pressure) {
      return groups.get(1).heat().at(253, pressure).coefficient()
          / groups.get(0).heat().at(253, pressure).coefficient();
    }

    @Test
    void besideAWarmWallGetItsHeat() {
      var edge = new EdgeHeat.Side(exact(4), 278.15);
      List<VesselGroup> groups = ResolvedLoad.groups(item, edge, ROOM);
      HeatSupply center = groups.get(0).heat().at(253.15, 10);
      assertThat(groups.get(1).heat().at(253.15, 10)).isEqualTo(center.withWall(4, 278.15));
    }
  }

  /** Fully specified reference case: 400 mL on the wall of a flask in a room at 22 °C. */
  @Test
  void aShellInAFlaskDriesAsTheReferenceSays() {
    var flask =
        new Flask(
            "invented", 1e-3, new Flask.Form.Shell(0.055, 0.15), 1e-12, 1.1, exact(7), exact(0));
    var item = item(flask, solution(1020, 0.06, 0), new CakeResistance(4e4, 4e7, 0), 4e-4, 1);
    near(dryingTime(ResolvedLoad.groups(item, ROOM).get(0), 0, 20), 61588.07965519889);
  }

  @Test
  void aPuddleInAFlaskDriesSlowerThanAShell() {
    var flask =
        new Flask("invented", 1e-3, new Flask.Form.Puddle(0.0139), 0.003, 1.1, exact(7), exact(0));
    var item = item(flask, solution(1020, 0.06, 0), new CakeResistance(4e4, 4e7, 0), 4e-4, 1);
    assertThat(dryingTime(ResolvedLoad.groups(item, ROOM).get(0), 0, 20))
        .isGreaterThan(2 * 61588.0);
  }

  /** Fully specified reference case: half a piece, heat from above only, surface at 50 °C. */
  @Test
  void aPieceOnAMeshDriesAsTwoHalves() {
    var piece = new Piece("invented", 0.02, 0.01, new HeatFromAbove(exact(6), 0.04));
    var item = item(piece, solution(1050, 0.18, 0.15), new CakeResistance(0, 3.8e7, 0), 2e-4, 5);
    VesselGroup halves = ResolvedLoad.groups(item, ROOM).get(0);
    assertThat(halves.count()).isEqualTo(10);
    near(dryingTime(halves, 323.15, 40), 92936.24200918626);
  }

  /** A tray that nothing warms from above is a slab as wide as itself. */
  @Test
  void aTrayUnderAWarmShelfDriesFasterThanAlone() {
    var alone =
        new Tray(
            "invented", 0.1, 0.1, 0.03, new HeatTransfer(8, 0.5, 0.02), exact(1), Optional.empty());
    var under =
        new Tray(
            "invented",
            0.1,
            0.1,
            0.03,
            new HeatTransfer(8, 0.5, 0.02),
            exact(1),
            Optional.of(new HeatFromAbove(exact(5), 0.04)));
    assertThat(time(under)).isLessThan(time(alone));
  }

  private static double time(Tray tray) {
    var item = item(tray, solution(1050, 0.18, 0.15), new CakeResistance(0, 3.8e7, 0), 1e-4, 3);
    return dryingTime(ResolvedLoad.groups(item, ROOM).get(0), 283.15, 40);
  }
}
