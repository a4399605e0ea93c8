package org.firnline.lab;

import java.util.Optional;
import org.firnline.evidence.Estimate;

/**
 * A flat open tray on a shelf, heated from below and, under another warm shelf, from above.
 *
 * @param name what people call it; not blank
 * @param length inner length, m; positive
 * @param width inner width, m; positive
 * @param innerHeight m; positive
 * @param heatTransfer typical coefficient from the shelf to its bottom, on its inner area
 * @param heatTransferFactor doubt about {@code heatTransfer} as a factor: best near 1
 * @param above the warm surface above; empty where there is none
 */
public record Tray(
    String name,
    double length,
    double width,
    double innerHeight,
    HeatTransfer heatTransfer,
    Estimate heatTransferFactor,
    Optional<HeatFromAbove> above)
    implements Vessel {

  /** Share of the brimful volume that leaves room for freezing and for carrying the tray. */
  private static final double FILLED_SHARE = 0.8;

  public Tray {
    Check.named(name, "tray name");
    Check.positive(length, "length of the tray", "m");
    Check.positive(width, "width of the tray", "m");
    Check.positive(innerHeight, "inner height of the tray", "m");
    Check.positive(heatTransferFactor.best(), "heat-transfer factor of the tray", "");
  }

  /** Inner bottom area, m2: heat enters and vapor leaves through the same area. */
  public double area() {
    return length * width;
  }

  /** Four fifths of the brimful volume; common practice, no published source. */
  @Override
  public double largestFill() {
    return FILLED_SHARE * area() * innerHeight;
  }

  @Override
  public String fillRule() {
    return "leaves no rim for freezing and carrying";
  }

  @Override
  public double frozenThickness(double frozenVolume_m3) {
    return frozenVolume_m3 / area();
  }

  @Override
  public <T> T fold(Cases<T> cases) {
    return cases.tray(this);
  }
}
