package org.firnline.drying.recipe;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;

/**
 * Primary drying of one vessel under settings that change in time.
 *
 * <p>Two forms: quasi-steady, in which the balance of the front holds at every moment, and
 * transient, in which vessel and frozen product store heat and lag the shelf. The second tends to
 * the first as the heat capacity goes to zero.
 *
 * <p>Assumes ṁ ≥ 0: vapor is not deposited on a vessel colder than the threshold. The last ice is
 * met exactly by making depth the clock.
 *
 * <p>Source: derivation in docs/science.md.
 */
public final class ScheduledDrying {

  /** Nobody waits longer, s: a year. */
  private static final double LONGEST_S = 365.25 * 86_400;

  private ScheduledDrying() {}

  /** Runs {@code vessel} without heat capacity until its ice is gone. */
  public static ScheduledRun quasiSteady(DryingVessel vessel, HeatSource heat, Schedule schedule) {
    return new ScheduleMarch(new QuasiSteadyVessel(vessel, heat, schedule), LONGEST_S)
        .run(schedule.bends());
  }

  /**
   * Runs {@code vessel} with the heat it stores until its ice is gone.
   *
   * @param productStart_K temperature of the product at time 0
   */
  public static ScheduledRun withStoredHeat(
      DryingVessel vessel,
      HeatSource heat,
      Schedule schedule,
      ThermalMass mass,
      double productStart_K) {
    if (mass.at(0) == 0) {
      return quasiSteady(vessel, heat, schedule);
    }
    var model = new TransientVessel(vessel, heat, schedule, mass, productStart_K);
    return new ScheduleMarch(model, LONGEST_S).run(schedule.bends());
  }
}
