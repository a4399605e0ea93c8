package org.firnline.lab;

import org.firnline.evidence.Estimate;

/**
 * What vessels beside a wall or door receive beyond the shelf's heat. It is described in one of two
 * ways and never in both, because the wall would then count twice.
 */
public sealed interface EdgeHeat {

  /**
   * The whole coefficient of an edge vessel over that of a center vessel, as publications print it.
   *
   * @param ratio edge over center; best 1 or more
   * @param pressure at which it was measured, Pa; it falls as pressure rises
   */
  record Ratio(Estimate ratio, double pressure) implements EdgeHeat {

    public Ratio {
      Check.that(
          ratio.best() >= 1,
          "edge-ratio-range",
          "edge ratio",
          "edge ratio " + ratio.best(),
          "must be 1 or more, since edges get more heat",
          "give for instance 1.3");
      Check.positive(pressure, "pressure of the edge ratio", "Pa");
    }
  }

  /**
   * A coefficient of its own to a wall of its own temperature, independent of pressure because it
   * is mostly radiation.
   *
   * @param coefficient K_side on the outer bottom area, W/(m2 K); best positive
   * @param wallTemperature K; positive
   */
  record Side(Estimate coefficient, double wallTemperature) implements EdgeHeat {

    public Side {
      Check.positive(coefficient.best(), "side heat transfer", "W/(m2 K)");
      Check.positive(wallTemperature, "wall temperature", "K");
    }
  }
}
