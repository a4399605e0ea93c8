package org.firnline.planning.point;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.firnline.drying.dryer.MeasuredLine;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.LoadMoment;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Range;
import org.junit.jupiter.api.Test;

class BestPointSearchTest {

  private static final double LIMIT = 240.14999999999998;
  private static final Range SHELF = new Range(233.14999999999998, 313.15);
  private static final Range PRESSURE = new Range(4, 40);

  private static final DryingLoad VIALS =
      DryingLoad.of(
          new VesselGroup(
              300,
              new DryingVessel(
                  new Slab(0.0029055750000000005, 0.008589174483798324, 3.801e-4, 4.524e-4, 2.3),
                  new CakeResistance(48000, 4.8e7, 0),
                  0),
              ShelfHeat.of(new HeatTransfer(10, 1.04, 0.0231))));

  /** Fronts are solved to this share of their rates; two solutions may differ by it. */
  private static final double SOLVED = 1e-9;

  /** Fully specified reference case; its optimum is flat, so the rate is compared tightly. */
  @Test
  void meetsTheReferenceCase() {
    var limits = new PointLimits(LIMIT, SHELF, PRESSURE, VaporPath.UNLIMITED);
    BestPoint best = new BestPointSearch(VIALS, 0.5, limits).find().orElseThrow();
    assertThat(best.totalRate() / 300)
        .isCloseTo(3.3442146783147455e-08, within(1e-6 * 3.3442146783147455e-08));
    assertThat(best.pressure()).isCloseTo(4, within(1e-3 * 4));
    assertThat(best.shelf()).isCloseTo(255.34661807662906, within(1e-4 * 255));
    assertThat(best.limitedBy()).isEqualTo(BestPoint.Limit.PRODUCT);
  }

  @Test
  void noSettingOnAGridIsFaster() {
    var path = new VaporPath(List.of(new MeasuredLine(1e-6, 1)), 0);
    var limits = new PointLimits(LIMIT, SHELF, PRESSURE, path);
    BestPoint best = new BestPointSearch(VIALS, 0.2, limits).find().orElseThrow();
    assertThat(best.totalRate()).isLessThanOrEqualTo(path.rate(best.pressure()) * (1 + SOLVED));
    assertThat(best.warmest()).isLessThanOrEqualTo(LIMIT);
    for (double shelf = SHELF.low(); shelf <= SHELF.high(); shelf += 1) {
      LoadMoment moment = LoadMoment.dried(VIALS, shelf, 0.2);
      for (double pressure = 4; pressure <= 40; pressure += 0.5) {
        double rate = moment.totalRate(pressure);
        if (rate <= path.rate(pressure) && moment.warmest(pressure) <= LIMIT) {
          assertThat(rate).isLessThanOrEqualTo(best.totalRate() * (1 + SOLVED));
        }
      }
    }
  }

  @Test
  void aNarrowDuctLimitsBeforeTheProductDoes() {
    var path = new VaporPath(List.of(new MeasuredLine(1e-9, 0)), 0);
    var limits = new PointLimits(LIMIT, SHELF, PRESSURE, path);
    assertThat(new BestPointSearch(VIALS, 0.5, limits).find().orElseThrow().limitedBy())
        .isEqualTo(BestPoint.Limit.DRYER);
  }

  @Test
  void aFragileProductHasNoPoint() {
    var limits = new PointLimits(210, SHELF, PRESSURE, VaporPath.UNLIMITED);
    assertThat(new BestPointSearch(VIALS, 0.5, limits).find()).isEmpty();
  }
}
