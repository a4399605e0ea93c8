package org.firnline.drying.secondary;

/** A warming program for secondary drying, or why there is none. */
public sealed interface SecondaryDesign {

  /**
   * A program that keeps the glass and reaches the moisture.
   *
   * @param program ramp and hold temperature
   * @param holdTime after the ramp, s
   * @param margin how near the wettest solid comes to softening
   */
  record Found(WarmingProgram program, double holdTime, SecondaryDrying.GlassMargin margin)
      implements SecondaryDesign {

    /** Ramp and hold, s. */
    public double totalTime() {
      return program.rampTime() + holdTime;
    }
  }

  /**
   * The slowest solid keeps more water than wanted at the hold temperature.
   *
   * @param equilibrium what it keeps, kg/kg
   */
  record TargetUnreachable(double equilibrium) implements SecondaryDesign {}

  /**
   * Even the slowest ramp brings the wettest solid too near to its glass transition.
   *
   * @param margin with the slowest ramp
   */
  record TooSoft(SecondaryDrying.GlassMargin margin) implements SecondaryDesign {}
}
