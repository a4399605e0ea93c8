package org.firnline.planning.design;

import java.util.Optional;

/**
 * What a person wants of a recipe.
 *
 * @param risk accepted probability that the warmest vessel exceeds its critical temperature, and
 *     that the chamber pressure leaves its setting; above 0, below 1
 * @param mostSteps steps of primary drying that the dryer's programmer takes; 1 or more
 * @param annealing how the frozen product is annealed; empty where it is not
 * @param secondary what secondary drying has to achieve; empty for the rule of thumb
 */
public record DesignWishes(
    double risk, int mostSteps, Optional<Annealing> annealing, Optional<SecondaryWish> secondary) {

  /** One run in twenty, three steps, no annealing, secondary drying by rule of thumb. */
  public static final DesignWishes USUAL =
      new DesignWishes(0.05, 3, Optional.empty(), Optional.empty());

  private static final int MOST = 12;

  public DesignWishes {
    if (!(risk > 0 && risk < 1)) {
      throw new IllegalArgumentException("accepted risk " + risk + " must lie between 0 and 1");
    }
    if (mostSteps < 1 || mostSteps > MOST) {
      throw new IllegalArgumentException(
          mostSteps + " steps of primary drying: 1 to " + MOST + " can be planned");
    }
  }

  /** These wishes for a programmer of another size. */
  public DesignWishes withMostSteps(int steps) {
    return new DesignWishes(risk, steps, annealing, secondary);
  }

  /** These wishes with another accepted risk. */
  public DesignWishes withRisk(double accepted) {
    return new DesignWishes(accepted, mostSteps, annealing, secondary);
  }

  /** These wishes with annealing. */
  public DesignWishes with(Annealing wanted) {
    return new DesignWishes(risk, mostSteps, Optional.of(wanted), secondary);
  }

  /** These wishes with a target for secondary drying. */
  public DesignWishes with(SecondaryWish wanted) {
    return new DesignWishes(risk, mostSteps, annealing, Optional.of(wanted));
  }
}
