package org.firnline.drying.secondary;

import org.firnline.drying.recipe.Track;

/**
 * The solid in one vessel when its ice is gone.
 *
 * @param moisture C_0, kg of water per kg of solids; 0 or more
 * @param desorption how it loses water
 */
public record MoistSolid(double moisture, Desorption desorption) {

  SecondaryDrying along(Track temperature) {
    return new SecondaryDrying(desorption, moisture, temperature);
  }
}
