package org.firnline.drying.freezing;

/**
 * One vessel between filling and cold, carried from shelf line to shelf line by closed forms; keeps
 * when its stages ended. {@link VesselFreezing} says what is assumed.
 *
 * <p>Source: closed forms of each stage, derivation in docs/science.md.
 */
public final class FreezingProgress {

  private final double nucleationTemperature;
  private FreezingVessel vessel;
  private FreezingState state;
  private double nucleation = Double.POSITIVE_INFINITY;
  private double frozen = Double.POSITIVE_INFINITY;

  private FreezingProgress(FreezingVessel vessel, FreezingState state, double nucleation_K) {
    this.vessel = vessel;
    this.state = state;
    this.nucleationTemperature = nucleation_K;
  }

  /**
   * A vessel that was just filled.
   *
   * @param start_K temperature of the liquid
   * @param nucleation_K temperature at which ice appears, at most the freezing point
   */
  public static FreezingProgress liquid(
      FreezingVessel vessel, double start_K, double nucleation_K) {
    return new FreezingProgress(vessel, FreezingState.liquid(start_K), nucleation_K);
  }

  /** The same product with another heat transfer, as when a pump starts. */
  public void continueIn(FreezingVessel other) {
    vessel = other;
  }

  /**
   * Follows a shelf that changes at a steady rate.
   *
   * @param from_s time
   * @param span_s how long; 0 or more
   * @param before_K shelf at the start
   * @param after_K shelf at the end
   */
  public void advance(double from_s, double span_s, double before_K, double after_K) {
    double slope = span_s > 0 ? (after_K - before_K) / span_s : 0;
    double gone = 0;
    while (gone < span_s) {
      var line = new FreezingState.Shelf(before_K + slope * gone, slope);
      var step = state.advanced(vessel, nucleationTemperature, line, span_s - gone);
      boolean stays = step.state().stage() == state.stage();
      gone = stays ? span_s : gone + step.time();
      note(step.state().stage(), from_s + gone);
      state = step.state();
    }
  }

  private void note(FreezingMoment.Stage reached, double time) {
    if (reached != FreezingMoment.Stage.LIQUID) {
      nucleation = Math.min(nucleation, time);
    }
    if (reached == FreezingMoment.Stage.FROZEN) {
      frozen = Math.min(frozen, time);
    }
  }

  /** What is going on. */
  public FreezingMoment.Stage stage() {
    return state.stage();
  }

  /** Product at bottom or wall while the shelf has {@code shelf_K}, K. */
  public double bottom(double shelf_K) {
    return state.moment(vessel, 0, shelf_K).bottom();
  }

  /** When the first ice appeared, s; infinite if it has not. */
  public double nucleation() {
    return nucleation;
  }

  /** When the last ice had formed, s; infinite if it has not. */
  public double frozen() {
    return frozen;
  }

  FreezingMoment moment(double time_s, double shelf_K) {
    return state.moment(vessel, time_s, shelf_K);
  }
}
