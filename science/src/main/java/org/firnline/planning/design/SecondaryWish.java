package org.firnline.planning.design;

import org.firnline.drying.secondary.MoistSolid;
import org.firnline.matter.solute.GordonTaylor1952;

/**
 * What secondary drying has to achieve and what is known about the cake.
 *
 * @param target wanted moisture, kg water per kg dry solids; positive
 * @param hold shelf temperature of the hold, K; positive
 * @param wettest the solid that softens first
 * @param slowest the solid that dries last
 * @param glass of the solid
 * @param margin wanted distance below the glass transition, K; 0 or more
 */
public record SecondaryWish(
    double target,
    double hold,
    MoistSolid wettest,
    MoistSolid slowest,
    GordonTaylor1952 glass,
    double margin) {

  public SecondaryWish {
    if (!(target > 0) || !(hold > 0) || !(margin >= 0)) {
      throw new IllegalArgumentException(
          "moisture " + target + ", hold " + hold + " K and margin " + margin + " K cannot be");
    }
  }
}
