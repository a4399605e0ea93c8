package org.firnline.drying.freezing;

/**
 * A freezing vessel at one time.
 *
 * @param time since the program began, s
 * @param shelf shelf temperature, K
 * @param bottom product at the bottom, where thermometers are put, K
 * @param top product at its upper surface, K
 * @param frozenShare ice formed over ice possible, 0 to 1
 * @param stage what is going on
 */
public record FreezingMoment(
    double time, double shelf, double bottom, double top, double frozenShare, Stage stage) {

  /** What is going on. */
  public enum Stage {
    /** Liquid, also below the freezing point. */
    LIQUID,
    /** Ice and liquid together, the front on its way. */
    FREEZING,
    /** All ice formed. */
    FROZEN
  }
}
