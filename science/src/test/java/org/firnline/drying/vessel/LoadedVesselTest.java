package org.firnline.drying.vessel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.PrimaryDrying;
import org.firnline.drying.primary.PrimaryDryingResult;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.Flask;
import org.firnline.lab.HeatFromAbove;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.LoadItem;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Piece;
import org.firnline.lab.Product;
import org.firnline.lab.Solution;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.firnline.lab.Vial;
import org.junit.jupiter.api.Test;

/** Fully specified cases of an independent reference model, built from the nouns of the lab. */
class LoadedVesselTest {

  private static final Provenance STATED = new Provenance.Stated("case");
  private static final Estimate ONE = Estimate.exact(1, STATED);

  /** The cases ask for 1e-8; dimensions here are turned into diameters and back. */
  private static final double AGREEMENT = 1e-7;

  private static Estimate exact(double best) {
    return Estimate.exact(best, STATED);
  }

  private static Product product(
      double density, double solids, double unfrozen, CakeResistance cake) {
    return new Product(
        "case",
        new Solution(density, solids, unfrozen, new PhaseDensities(917, 1590, 1000), 2.3),
        cake,
        ONE,
        new CriticalTemperature(CriticalTemperature.Kind.COLLAPSE, exact(242)));
  }

  private static LoadedVessel loaded(
      Product product, Vessel vessel, double fill, Surroundings surroundings) {
    return LoadedVessel.of(new LoadItem(product, vessel, fill, 1, 0), surroundings);
  }

  private static PrimaryDryingResult dried(LoadedVessel vessel, double shelf, double pressure) {
    HeatSupply supply = vessel.heat().at(shelf, pressure);
    return new PrimaryDrying().run(vessel.vessel(), supply, pressure);
  }

  private static void time(PrimaryDryingResult result, double expected) {
    assertThat(result.dryingTime().orElseThrow()).isCloseTo(expected, within(AGREEMENT * expected));
  }

  /** Case C01. Inner area 3.801 cm2, outer area 4.524 cm2. */
  @Test
  void isASlabInAVial() {
    double outer = Math.sqrt(4 * 4.524e-4 / Math.PI);
    double inner = Math.sqrt(4 * 3.801e-4 / Math.PI);
    var vial =
        new Vial(
            "10R",
            outer,
            (outer - inner) / 2,
            0.045,
            1.35e-5,
            new HeatTransfer(10, 1.04, 0.0231),
            ONE);
    var product = product(1019.5, 0.05, 0, new CakeResistance(4.8e4, 4.8e7, 0));
    LoadedVessel loaded = loaded(product, vial, 3e-6, Surroundings.USUAL);
    assertThat(loaded.parts()).isEqualTo(1);
    time(dried(loaded, 253.15, 10), 87213.7965077456);
  }

  /** Case G01: warm tray below, radiation from 40 °C above. */
  @Test
  void isHeatedFromBothSidesInATrayUnderAShelf() {
    var above = new HeatFromAbove(exact(5), 0.04);
    var tray =
        new Tray("tray", 0.1, 0.1, 0.02, new HeatTransfer(8, 0.5, 0.02), ONE, Optional.of(above));
    var product = product(1050, 0.18, 0.15, new CakeResistance(0, 3.8e7, 0));
    var around = new Surroundings(295, OptionalDouble.of(313.15));
    time(dried(loaded(product, tray, 1e-4, around), 283.15, 40), 30827.907124131543);
  }

  /** Without a surface above only the shelf heats, and drying takes longer. */
  @Test
  void isHeatedFromBelowOnlyInAnOpenTray() {
    var tray =
        new Tray("tray", 0.1, 0.1, 0.02, new HeatTransfer(8, 0.5, 0.02), ONE, Optional.empty());
    var product = product(1050, 0.18, 0.15, new CakeResistance(0, 3.8e7, 0));
    var result = dried(loaded(product, tray, 1e-4, Surroundings.USUAL), 283.15, 40);
    assertThat(result.dryingTime().orElseThrow()).isGreaterThan(30827);
  }

  /** The next shelf is as warm as the one below. */
  @Test
  void takesTheNextShelfAsWarmAsItsOwn() {
    var above = new HeatFromAbove(exact(5), 0.04);
    var tray =
        new Tray("tray", 0.1, 0.1, 0.02, new HeatTransfer(8, 0.5, 0.02), ONE, Optional.of(above));
    var product = product(1050, 0.18, 0.15, new CakeResistance(0, 3.8e7, 0));
    LoadedVessel loaded = loaded(product, tray, 1e-4, Surroundings.USUAL);
    assertThat(loaded.heat().at(283.15, 40).above().temperature()).isEqualTo(283.15);
  }

  /** Case G02 is half a piece: the whole is twice as thick and dries in the same time. */
  @Test
  void isHalfOfAPieceOnAMesh() {
    var piece = new Piece("slice", 0.02, 0.01, new HeatFromAbove(exact(6), 0.04));
    var product = product(1050, 0.18, 0.15, new CakeResistance(0, 3.8e7, 0));
    var around = new Surroundings(295, OptionalDouble.of(323.15));
    LoadedVessel half = loaded(product, piece, 2e-4, around);
    assertThat(half.parts()).isEqualTo(2);
    PrimaryDryingResult result = dried(half, 273.15, 40);
    time(result, 92936.24200918626);
    double whole = product.solution().iceMass(2e-4);
    assertThat(result.iceMass() * half.parts()).isCloseTo(whole, within(1e-12 * whole));
  }

  /** Case F01: shell on a thin wall in a room at 22 °C, 20 Pa. */
  @Test
  void isAShellInAFlask() {
    Flask flask = flask(new Flask.Form.Shell(0.055, 0.15), 1e-12, 0);
    var product = product(1020, 0.06, 0, new CakeResistance(4e4, 4e7, 0));
    time(dried(loaded(product, flask, 4e-4, Surroundings.USUAL), 0, 20), 61588.07965519889);
  }

  @Test
  void isHinderedByItsPort() {
    var product = product(1020, 0.06, 0, new CakeResistance(4e4, 4e7, 0));
    var form = new Flask.Form.Shell(0.055, 0.15);
    assertThat(hours(product, flask(form, 0.002, 1e6)))
        .isGreaterThan(hours(product, flask(form, 0.002, 0)));
  }

  /**
   * Below the critical radius of insulation, k/h = 1.1/7 m, a thicker wall gains more surface than
   * it adds resistance: the flask dries a little faster.
   */
  @Test
  void isNotHinderedByGlassThinnerThanTheCriticalRadius() {
    var product = product(1020, 0.06, 0, new CakeResistance(4e4, 4e7, 0));
    var form = new Flask.Form.Shell(0.055, 0.15);
    assertThat(hours(product, flask(form, 0.005, 0)))
        .isLessThan(hours(product, flask(form, 1e-12, 0)));
  }

  /** The same volume frozen as it stands is four times as deep and takes several times as long. */
  @Test
  void isASlabInAPuddle() {
    var product = product(1020, 0.06, 0, new CakeResistance(4e4, 4e7, 0));
    double shell = hours(product, flask(new Flask.Form.Shell(0.055, 0.15), 0.002, 0));
    double puddle = hours(product, flask(new Flask.Form.Puddle(0.0095), 0.002, 0));
    assertThat(puddle).isGreaterThan(3 * shell);
  }

  private static double hours(Product product, Flask flask) {
    return dried(loaded(product, flask, 4e-4, Surroundings.USUAL), 0, 20).dryingTime().orElseThrow()
        / 3600;
  }

  private static Flask flask(Flask.Form form, double wall, double port) {
    return new Flask(
        "flask", 1.2e-3, form, wall, Flask.BOROSILICATE_CONDUCTIVITY, exact(7), exact(port));
  }

  @Test
  void refusesImpossibleSurroundings() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Surroundings(0, OptionalDouble.empty()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Surroundings(295, OptionalDouble.of(-1)));
  }
}
