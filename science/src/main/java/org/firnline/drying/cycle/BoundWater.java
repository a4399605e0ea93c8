package org.firnline.drying.cycle;

import java.util.Optional;
import org.firnline.drying.secondary.Desorption;
import org.firnline.matter.solute.GordonTaylor1952;

/**
 * The water a cake holds when its last ice is gone.
 *
 * @param desorption how the cake loses it; empty where it does not
 * @param start C when the last ice is gone, kg of water per kg of solids; 0 or more
 * @param solids kg; 0 or more
 * @param glass its glass transition; empty where nobody knows, and then nothing is checked
 */
public record BoundWater(
    Optional<Desorption> desorption,
    double start,
    double solids,
    Optional<GordonTaylor1952> glass) {

  /** Nothing left to lose. */
  public static final BoundWater NONE = new BoundWater(Optional.empty(), 0, 0, Optional.empty());

  public BoundWater {
    if (!(start >= 0) || !(solids >= 0) || Double.isInfinite(start + solids)) {
      throw new IllegalArgumentException(
          "moisture " + start + " and solids of " + solids + " kg must be finite and 0 or more");
    }
  }

  /** Water that leaves by {@code desorption}, in a cake whose glass transition nobody knows. */
  public static BoundWater of(Desorption desorption, double start, double solids) {
    return new BoundWater(Optional.of(desorption), start, solids, Optional.empty());
  }

  /** The same with a glass transition to stay below. */
  public BoundWater in(GordonTaylor1952 transition) {
    return new BoundWater(desorption, start, solids, Optional.of(transition));
  }

  /** The same water in {@code factor} times as much cake. */
  public BoundWater times(double factor) {
    return new BoundWater(desorption, start, solids * factor, glass);
  }
}
