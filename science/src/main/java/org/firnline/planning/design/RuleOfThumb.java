package org.firnline.planning.design;

import java.util.List;
import java.util.OptionalDouble;
import org.firnline.evidence.Source;
import org.firnline.lab.Dryer;
import org.firnline.lab.LoadItem;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.planning.forecast.DryingProgram;
import org.firnline.planning.forecast.Sharing;

/**
 * The recipe of someone without a model: product 3 K below its critical temperature, chamber
 * pressure a quarter of its ice vapor pressure, shelf 10 K warmer than the product.
 *
 * <p>Source: margin of 2 to 5 K and 20 to 30 % of the ice vapor pressure after Tang &amp; Pikal,
 * Pharm. Res. 21, 191 (2004) (from memory); the shelf 10 K above is common practice, no published
 * source.
 *
 * @param sharing load and dryer
 */
record RuleOfThumb(Sharing sharing) {

  static final Source SOURCE =
      new Source(
          "margin and pressure after Tang & Pikal, Pharm. Res. 21, 191 (2004); shelf 10 K warmer"
              + " by common practice, no published source",
          Source.Status.FROM_MEMORY);

  private static final double MARGIN_K = 3;
  private static final double PRESSURE_SHARE = 0.25;
  private static final double SHELF_ABOVE_K = 10;

  DryingProgram program(double shelfStart, double ramp) {
    Dryer dryer = sharing.dryer();
    double product = target();
    double pressure =
        dryer.pressure().nearest(PRESSURE_SHARE * new WagnerEtAl2011Ice().pressure(product));
    double shelf = dryer.shelfTemperature().nearest(StepTuner.typed(product + SHELF_ABOVE_K));
    return new DryingProgram(
        shelfStart,
        ramp,
        List.of(
            new DryingProgram.Leg(
                shelf,
                OptionalDouble.of(Math.max(dryer.pressure().low(), Math.rint(2 * pressure) / 2)),
                Double.POSITIVE_INFINITY)));
  }

  /** Of the most delicate item. */
  private double target() {
    return sharing.load().portions().stream()
            .map(portion -> portion.item())
            .map(LoadItem::product)
            .mapToDouble(product -> product.critical().temperature().best())
            .min()
            .orElseThrow()
        - MARGIN_K;
  }
}
