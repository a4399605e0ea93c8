package org.firnline.planning.doubt;

/**
 * Share of a variance that one cause has.
 *
 * @param cause what it is
 * @param first alone; about 0 to 1
 * @param total with everything it takes part in
 */
public record Share(Cause cause, double first, double total) {

  /** What makes one run differ from another. */
  public enum Cause {
    /** What is not known about the heat that vessels get. */
    HEAT_TRANSFER,
    /** What is not known about the resistance of the cake. */
    CAKE_RESISTANCE,
    /** What is not known about the critical temperature. */
    CRITICAL_TEMPERATURE,
    /** Chance: how far out the last and the warmest vessel lie. No measurement removes it. */
    VESSELS
  }
}
