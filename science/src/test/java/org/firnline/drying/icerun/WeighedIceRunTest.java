package org.firnline.drying.icerun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.Slab;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.SublimationEnthalpy;
import org.junit.jupiter.api.Test;

class WeighedIceRunTest {

  private static final Provenance INVENTED = new Provenance.Assumed("invented for this test");

  private static Estimate value(double best, double relative) {
    return new Estimate(best, best * relative, INVENTED);
  }

  /** Derived example: 0.347 g, 2.84 MJ/kg, 3.801 cm2, 20 K, 7200 s give 18.0 W/(m2 K). */
  @Test
  void meetsTheDerivedExample() {
    var run = new WeighedIceRun(value(0.347e-3, 0), value(20 * 7200, 0), value(3.801e-4, 0), 240);
    assertThat(run.coefficient(SublimationEnthalpy.constant(2.84e6)).best())
        .isCloseTo(18.0, within(0.05));
  }

  /** Fully specified reference case: four hours of bare ice give K_v back. */
  @Test
  void aSimulatedRunGivesItsCoefficientBack() {
    HeatTransfer heat = new HeatTransfer(10, 1.04, 0.0231);
    Slab ice = new Slab(0.003, 0.008607044521659196, 3.801e-4, 4.524e-4, 2.3);
    var found =
        SimulatedIceRun.of(
            ice,
            new DryingVessel(ice, new CakeResistance(0, 0, 0), 0),
            HeatSupply.fromShelf(heat, 263.15, 10),
            10,
            4 * 3600);
    assertThat(found.loss()).isCloseTo(0.0012802219919647024, within(1e-8 * found.loss()));
    assertThat(found.drive()).isCloseTo(435384.575287578, within(1e-8 * found.drive()));
    var run =
        new WeighedIceRun(
            value(found.loss(), 0),
            value(found.drive(), 0),
            value(4.524e-4, 0),
            found.frontTemperature());
    assertThat(run.coefficient(new MurphyKoop2005Enthalpy()).best())
        .isCloseTo(heat.at(10), within(1e-8 * heat.at(10)));
  }

  /** Independent relative uncertainties of a product add in squares (JCGM 100:2008, 5.1.6). */
  @Test
  void carriesItsUncertainty() {
    var run =
        new WeighedIceRun(value(0.3e-3, 0.03), value(140_000, 0.04), value(3.8e-4, 0.012), 240);
    Estimate coefficient = run.coefficient(SublimationEnthalpy.constant(2.84e6));
    double relative = Math.sqrt(0.03 * 0.03 + 0.04 * 0.04 + 0.012 * 0.012);
    assertThat(coefficient.spread() / coefficient.best()).isCloseTo(relative, within(1e-12));
  }
}
