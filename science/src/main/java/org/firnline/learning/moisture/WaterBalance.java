package org.firnline.learning.moisture;

import java.util.ArrayList;
import java.util.List;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;

/**
 * Where the water of a run went: in = collected + left in the product + gone elsewhere.
 *
 * @param in water filled in, kg
 * @param sublimed what left the product, kg: in minus left
 * @param collected what melted off the collector, kg
 * @param left what the dried product still holds, kg
 * @param gone in minus collected minus left, kg: to the pump, spilled, or an error of weighing
 */
public record WaterBalance(
    Estimate in, Estimate sublimed, Estimate collected, Estimate left, Estimate gone) {

  private static final double CLEARLY = 2;
  private static final Provenance COMPUTED = new Provenance.Measured("water balance of the run");

  /** The balance of three measured masses with independent errors. */
  public static WaterBalance of(Estimate in, Estimate collected, Estimate left) {
    double sublimed = in.best() - left.best();
    double gone = sublimed - collected.best();
    double ofSublimed = Math.hypot(in.spread(), left.spread());
    return new WaterBalance(
        in,
        new Estimate(sublimed, ofSublimed, COMPUTED),
        collected,
        left,
        new Estimate(gone, Math.hypot(ofSublimed, collected.spread()), COMPUTED));
  }

  /** What the balance says, in the order of its weight. */
  public enum Verdict {
    /** In and out agree within their doubt. */
    CLOSES,
    /** More went in than came out: vapor passed the collector, or ice stayed on it. */
    WATER_MISSING,
    /** More came out than went in: old ice on the collector, or moisture from the room. */
    WATER_TOO_MUCH,
    /** More is left than half of what went in: nothing like dry. */
    PRODUCT_WET
  }

  /** What stands out. */
  public List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    if (left.best() > in.best() / 2) {
      verdicts.add(Verdict.PRODUCT_WET);
    }
    if (gone.best() > CLEARLY * gone.spread()) {
      verdicts.add(Verdict.WATER_MISSING);
    } else if (gone.best() < -CLEARLY * gone.spread()) {
      verdicts.add(Verdict.WATER_TOO_MUCH);
    } else {
      verdicts.add(Verdict.CLOSES);
    }
    return List.copyOf(verdicts);
  }
}
