package org.firnline.planning.together;

/**
 * One item holds another up, or they should not be together.
 *
 * @param cause number of the item that causes it
 * @param sufferer number of the item that suffers; the same as {@code cause} for none in particular
 * @param reason why
 * @param cost_s time it costs, s; 0 where it is no matter of time
 */
public record Conflict(int cause, int sufferer, Reason reason, double cost_s) {

  /** Why two items do not suit each other. */
  public enum Reason {
    /** Its low critical temperature keeps the shelf colder than the other needs. */
    TEMPERATURE,
    /** It dries so long that the other stands dry and waits. */
    TIME,
    /** Its vapor takes the dryer's capability, so the other must be dried more slowly. */
    VAPOR,
    /** Food beside laboratory samples. */
    FOOD,
    /** Solvent or acid leaves with its vapor and reaches the other. */
    SOLVENT_OR_ACID
  }
}
