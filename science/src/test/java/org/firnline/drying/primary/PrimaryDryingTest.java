package org.firnline.drying.primary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.firnline.matter.MurphyKoop2005Ice;
import org.firnline.matter.SublimationEnthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.numerics.Root;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrimaryDryingTest {

  private static final HeatTransfer AVERAGE_TUBING = new HeatTransfer(10, 1.04, 0.0231);
  private static final CakeResistance DISACCHARIDE = new CakeResistance(4.8e4, 4.8e7, 0);
  private static final Solution FIVE_PERCENT =
      new Solution(1019.5, 0.05, 0, new PhaseDensities(917, 1590, 1000), 2.3);
  private static final double INNER_AREA = 3.801e-4;
  private static final double OUTER_AREA = 4.524e-4;
  private static final double FILL = 3e-6;

  private final PrimaryDrying drying = new PrimaryDrying();

  private static DryingVessel vial(Solution solution, CakeResistance cake, double mouth) {
    return new DryingVessel(Slab.of(solution, FILL, INNER_AREA, OUTER_AREA), cake, mouth);
  }

  /** Fully specified cases, confirmed there by an independent march in time to 1e-14. */
  @Nested
  class IndependentReferenceModel {

    /** The agreement that the cases ask of a second implementation. */
    private static final double AGREEMENT = 1e-8;

    @Test
    void driesATenMilliliterVial() {
      var result =
          drying.run(
              vial(FIVE_PERCENT, DISACCHARIDE, 0),
              HeatSupply.fromShelf(AVERAGE_TUBING, 253.15, 10),
              10);
      var dries = (Outcome.Dries) result.outcome();
      var course = result.course().orElseThrow();
      near(dries.time(), 87213.7965077456);
      near(dries.halfIceTime(), 37563.14427865861);
      near(result.iceMass(), 0.0029055750000000005);
      near(result.thickness(), 0.008589174483798324);
      near(course.warmestPoint(), 244.13606996177646);
      near(course.warmestFront(), 244.13606996177646);
      near(course.peakRate(), 4.877907990894742e-08);
      near(course.start().frontTemperature(), 235.19940014562337);
      near(course.start().bottomTemperature(), 236.55977811947767);
      near(course.end().rate(), 2.6503239962944492e-08);
    }

    @Test
    void driesACornerVialWithAWarmWall() {
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 253.15, 10).withWall(4, 278.15);
      var result = drying.run(vial(FIVE_PERCENT, DISACCHARIDE, 0), supply, 10);
      near(result.dryingTime().orElseThrow(), 61412.93283087188);
      near(result.course().orElseThrow().warmestPoint(), 246.9570125548308);
    }

    @Test
    void driesThroughAStopper() {
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 253.15, 10);
      var result = drying.run(vial(FIVE_PERCENT, DISACCHARIDE, 5e7), supply, 10);
      near(result.dryingTime().orElseThrow(), 89689.3021735934);
    }

    @Test
    void driesBareIceWhoseBottomIsWarmestAtTheStart() {
      var water = new Solution(1000, 0, 0, new PhaseDensities(917, 1590, 1000), 2.3);
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 263.15, 10);
      var result = drying.run(vial(water, new CakeResistance(0, 0, 0), 0), supply, 10);
      var course = result.course().orElseThrow();
      near(result.dryingTime().orElseThrow(), 32997.65061696722);
      near(course.warmestPoint(), 233.4048058158058);
      near(course.start().frontTemperature(), 230.96066158810027);
      near(course.peakRate(), 9.465080133922675e-08);
    }

    @Test
    void saysThatAColdShelfSublimesNothing() {
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 228.15, 10);
      var result = drying.run(vial(FIVE_PERCENT, DISACCHARIDE, 0), supply, 10);
      assertThat(result.outcome()).isEqualTo(new Outcome.NothingSublimes(228.15));
      assertThat(result.dryingTime()).contains(Double.POSITIVE_INFINITY);
    }

    @Test
    void saysWhereAndWhenAHotShelfMeltsTheBottom() {
      var cake = new CakeResistance(4.8e4, 4e8, 0);
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 298.15, 20);
      var result = drying.run(vial(FIVE_PERCENT, cake, 0), supply, 20);
      var melts = (Outcome.Melts) result.outcome();
      assertThat(melts.depth()).isCloseTo(0.005191490946523904, within(1e-6 * melts.depth()));
      assertThat(melts.time()).isCloseTo(14992.149521194635, within(1e-6 * melts.time()));
      assertThat(result.dryingTime()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
      "0, 20, 61588.07965519889, 249.25037007569358",
      "21.7968437452225, 10, 58570.464996341645, 246.8560695894047"
    })
    void driesAShellInAFlaskOnTheBench(
        double leveling, double pressure, double time, double warmest) {
      var solution = new Solution(1020, 0.06, 0, new PhaseDensities(917, 1590, 1000), 2.3);
      var shell = Shell.of(solution, 4e-4, 0.055, 0.15, Shell.Glass.NONE);
      var vessel = new DryingVessel(shell, new CakeResistance(4e4, 4e7, leveling), 0);
      var room = new HeatSupply(7, 295.15, HeatSupply.Above.NONE);
      var result = drying.run(vessel, room, pressure);
      near(result.dryingTime().orElseThrow(), time);
      near(result.course().orElseThrow().warmestPoint(), warmest);
    }

    @ParameterizedTest
    @CsvSource({
      "8, 0.5, 0.02, 283.15, 5, 313.15, 30827.907124131543, 255.7060049722311",
      "0, 0, 0, 273.15, 6, 323.15, 92936.24200918626, 248.34985133897956"
    })
    void driesFoodWithHeatFromAbove(
        double a,
        double b,
        double c,
        double shelf,
        double above,
        double top,
        double t,
        double max) {
      var solution = new Solution(1050, 0.18, 0.15, new PhaseDensities(917, 1590, 1000), 2.3);
      var vessel =
          new DryingVessel(Slab.of(solution, 1e-4, 0.01, 0.01), new CakeResistance(0, 3.8e7, 0), 0);
      var supply =
          HeatSupply.fromShelf(new HeatTransfer(a, b, c), shelf, 40)
              .withAbove(new HeatSupply.Above(above, 0.04, top));
      var result = drying.run(vessel, supply, 40);
      near(result.dryingTime().orElseThrow(), t);
      near(result.course().orElseThrow().warmestPoint(), max);
    }

    private static void near(double actual, double expected) {
      assertThat(actual).isCloseTo(expected, within(AGREEMENT * Math.abs(expected)));
    }
  }

  @Nested
  class ClosedForms {

    /** A_1 = 0 and k_f infinite: one front temperature, one rate. */
    @Test
    void constantRate() {
      var perfect = new Solution(1019.5, 0.05, 0, FIVE_PERCENT.phases(), 1e12);
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 253.15, 10);
      var result = drying.run(vial(perfect, new CakeResistance(4.8e4, 0, 0), 0), supply, 10);
      var ice = new WagnerEtAl2011Ice();
      var enthalpy = new org.firnline.matter.MurphyKoop2005Enthalpy();
      double front =
          Root.find(
              t ->
                  AVERAGE_TUBING.at(10) * OUTER_AREA * (253.15 - t)
                      - enthalpy.specific(t) * INNER_AREA * (ice.pressure(t) - 10) / 4.8e4,
              231,
              253);
      double rate = INNER_AREA * (ice.pressure(front) - 10) / 4.8e4;
      double time = result.iceMass() / rate;
      assertThat(time).isCloseTo(55768.618552439955, within(1e-8 * time));
      assertThat(result.dryingTime().orElseThrow()).isCloseTo(time, within(1e-9 * time));
    }

    /** K_v and k_f infinite: front at shelf temperature, t = μ′(R_0 L + A_1 L²/2)/(p − P). */
    @Test
    void perfectContact() {
      var perfect = new Solution(1019.5, 0.05, 0, FIVE_PERCENT.phases(), 1e14);
      var supply = HeatSupply.fromShelf(new HeatTransfer(1e12, 0, 0), 243.15, 8);
      var result = drying.run(vial(perfect, DISACCHARIDE, 0), supply, 8);
      double depth = result.thickness();
      double icePerVolume = result.iceMass() / (depth * INNER_AREA);
      double drive = new WagnerEtAl2011Ice().pressure(243.15) - 8;
      double time = icePerVolume * (4.8e4 * depth + 4.8e7 * depth * depth / 2) / drive;
      assertThat(result.dryingTime().orElseThrow()).isCloseTo(time, within(1e-7 * time));
    }

    /** A shell much thinner than its radius is a slab, to first order in thickness/radius. */
    @Test
    void thinShellIsASlab() {
      double radius = 10;
      double height = 0.001;
      double area = 2 * Math.PI * radius * height;
      var shell = Shell.of(FIVE_PERCENT, FILL, radius, height, Shell.Glass.NONE);
      var slab = Slab.of(FIVE_PERCENT, FILL, area, area);
      var supply = new HeatSupply(20, 253.15, HeatSupply.Above.NONE);
      double shellTime =
          drying
              .run(new DryingVessel(shell, DISACCHARIDE, 0), supply, 10)
              .dryingTime()
              .orElseThrow();
      double slabTime =
          drying
              .run(new DryingVessel(slab, DISACCHARIDE, 0), supply, 10)
              .dryingTime()
              .orElseThrow();
      assertThat(shellTime).isCloseTo(slabTime, within(5 * shell.thickness() / radius * slabTime));
    }
  }

  /**
   * Derived reference solutions for the vial model: Murphy–Koop ice, constant enthalpy of 2.84
   * MJ/kg, k_f 2.3 W/(m K), frozen depth and water mass as printed (two quadratures agreed to 1e-4
   * h).
   */
  @Nested
  class PrintedReferenceSolutions {

    private static final double PRINTED_TEMPERATURE_K = 0.05;
    private static final double PRINTED_TIME = 0.005;

    @ParameterizedTest(name = "{0}")
    @CsvSource({
      "R1, 22, 1.0, 10, 0.0231, 4.8e4, 4.8e7, 0,   10,   -20, 6.9293,  6.1658,  18.167, -37.866, -36.740, -29.728",
      "R3, 24, 1.0, 8,  0.0347, 5.0e4, 6.0e7, 150, 10,   -10, 11.4534, 10.1914, 22.199, -36.923, -34.628, -28.121",
      "R5, 16, 1.0, 12, 0.0116, 3.0e4, 3.0e7, 0,   6.67, -30, 3.5354,  3.1458,  10.809, -42.437, -41.993, -38.060"
    })
    void areMet(
        String name,
        double outer_mm,
        double wall_mm,
        double contact,
        double leveling,
        double initial,
        double growth,
        double cakeLeveling,
        double pressure,
        double shelf_C,
        double depth_mm,
        double waterPerArea,
        double time_h,
        double startFront_C,
        double startBottom_C,
        double end_C) {
      double inner = Math.PI / 4 * Math.pow((outer_mm - 2 * wall_mm) / 1e3, 2);
      double outer = Math.PI / 4 * Math.pow(outer_mm / 1e3, 2);
      var slab = new Slab(waterPerArea * inner, depth_mm / 1e3, inner, outer, 2.3);
      var cake = new CakeResistance(initial, growth, cakeLeveling);
      var heat = new HeatTransfer(contact, 1.04, leveling);
      var front =
          new QuasiSteadyFront(new MurphyKoop2005Ice(), SublimationEnthalpy.constant(2.84e6));
      var result =
          new PrimaryDrying(front)
              .run(
                  new DryingVessel(slab, cake, 0),
                  HeatSupply.fromShelf(heat, shelf_C + 273.15, pressure),
                  pressure);
      var course = result.course().orElseThrow();
      double hours = result.dryingTime().orElseThrow() / 3600;
      assertThat(hours).isCloseTo(time_h, within(PRINTED_TIME * time_h));
      celsius(course.start().frontTemperature(), startFront_C);
      celsius(course.start().bottomTemperature(), startBottom_C);
      celsius(course.end().frontTemperature(), end_C);
    }

    private static void celsius(double kelvin, double printed_C) {
      assertThat(kelvin - 273.15).isCloseTo(printed_C, within(PRINTED_TEMPERATURE_K));
    }
  }

  /**
   * Coffee-extract slab heated through its dried layer from a surface at 30 °C. Source:
   * Schwartzberg, in a reprint of an encyclopedia chapter (authorship from memory): interface at
   * −29.4 °C and 40.1 Pa, whatever the depth, with dried-layer conductivity 0.035 W/(m K),
   * permeability 2.63e-8 s and 12.93 Pa at the surface. The printed tolerances cover the spread of
   * the enthalpy used.
   */
  @Nested
  class PublishedCoffeeSlab {

    private static final double PERMEABILITY = 3.5e-9 * 7.50062;

    @ParameterizedTest
    @CsvSource({"0.2, 2.91e6, -29.47", "0.9, 2.91e6, -29.47", "0.5, 2.84e6, -29.32"})
    void meetsTheInterfaceTemperature(double share, double enthalpy, double expected_C) {
      double depth = 0.00625;
      var slab = new Slab(5, depth, 1, 1, 2.3);
      var cake = new CakeResistance(0, 1 / PERMEABILITY, 0);
      var surface = new HeatSupply.Above(1e12, 0.035, 303.15);
      var supply = new HeatSupply(0, 273.15, surface);
      var front =
          new QuasiSteadyFront(new MurphyKoop2005Ice(), SublimationEnthalpy.constant(enthalpy));
      var state = front.at(new DryingVessel(slab, cake, 0), supply, 12.93, share * depth);
      assertThat(state.frontTemperature() - 273.15).isCloseTo(-29.4, within(0.2));
      assertThat(state.frontTemperature() - 273.15).isCloseTo(expected_C, within(0.05));
      assertThat(new MurphyKoop2005Ice().pressure(state.frontTemperature()))
          .isCloseTo(40.1, within(0.02 * 40.1));
    }
  }

  @Nested
  class EnergyAndMass {

    /** Heat from the shelf equals the heat that the vapor carries away, at every depth. */
    @Test
    void balance() {
      var vessel = vial(FIVE_PERCENT, DISACCHARIDE, 0);
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 253.15, 10);
      var enthalpy = new org.firnline.matter.MurphyKoop2005Enthalpy();
      for (TimedState timed : drying.path(vessel, supply, 10, vessel.geometry().thickness(), 40)) {
        FrontState state = timed.state();
        double in = supply.coefficient() * OUTER_AREA * (253.15 - state.bottomTemperature());
        double out = enthalpy.specific(state.frontTemperature()) * state.rate();
        assertThat(in).isCloseTo(out, within(1e-9 * out));
      }
    }

    @Test
    void theRateIntegratesToTheIce() {
      var vessel = vial(FIVE_PERCENT, DISACCHARIDE, 0);
      var supply = HeatSupply.fromShelf(AVERAGE_TUBING, 253.15, 10);
      var path = drying.path(vessel, supply, 10, vessel.geometry().thickness(), 4001);
      double sublimed = 0;
      for (int i = 1; i < path.size(); i++) {
        double step = path.get(i).time() - path.get(i - 1).time();
        sublimed += step * (path.get(i).state().rate() + path.get(i - 1).state().rate()) / 2;
      }
      double ice = vessel.geometry().iceMass();
      assertThat(sublimed).isCloseTo(ice, within(1e-6 * ice));
    }
  }
}
