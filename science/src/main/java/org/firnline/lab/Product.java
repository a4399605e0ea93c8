package org.firnline.lab;

import org.firnline.evidence.Estimate;

/**
 * A material to be dried.
 *
 * @param name what the lab calls it; not blank
 * @param solution the liquid as filled
 * @param resistance typical resistance of its cake
 * @param resistanceFactor doubt about {@code resistance} as a factor on R_0 and A_1: best near 1,
 *     spread as a relative standard deviation, origin of the resistance
 * @param critical critical temperature
 */
public record Product(
    String name,
    Solution solution,
    CakeResistance resistance,
    Estimate resistanceFactor,
    CriticalTemperature critical) {

  public Product {
    Check.named(name, "product name");
    Check.positive(resistanceFactor.best(), "cake resistance factor", "(relative)");
  }
}
