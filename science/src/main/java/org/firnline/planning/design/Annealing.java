package org.firnline.planning.design;

import org.firnline.matter.Water;

/**
 * Warming of frozen product so that it crystallises or its ice grows, before drying.
 *
 * <p>Usual: 10 to 20 K above T_g′ and below melting, 2 to 6 h (from memory).
 *
 * @param temperature of the shelf, K; below the melting point of ice
 * @param hold s; positive
 */
public record Annealing(double temperature, double hold) {

  public Annealing {
    if (!(temperature > 0 && temperature < Water.TRIPLE_POINT_TEMPERATURE)) {
      throw new IllegalArgumentException(
          "annealing at "
              + temperature
              + " K would melt the ice; stay below "
              + Water.TRIPLE_POINT_TEMPERATURE
              + " K");
    }
    if (!(hold > 0)) {
      throw new IllegalArgumentException("annealing for " + hold + " s is no annealing");
    }
  }
}
