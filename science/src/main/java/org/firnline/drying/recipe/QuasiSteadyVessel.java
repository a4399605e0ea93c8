package org.firnline.drying.recipe;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.FrontFollower;
import org.firnline.drying.primary.FrontState;
import org.firnline.drying.primary.HeatSource;

/** A vessel without heat capacity: at every moment the balance of the front holds. */
final class QuasiSteadyVessel implements VesselModel {

  private static final double ACCURACY = 1e-10;

  private final DryingVessel vessel;
  private final HeatSource heat;
  private final Schedule schedule;
  private final FrontFollower front;
  private double end = Double.POSITIVE_INFINITY;

  QuasiSteadyVessel(DryingVessel vessel, HeatSource heat, Schedule schedule) {
    this.vessel = vessel;
    this.heat = heat;
    this.schedule = schedule;
    this.front = new FrontFollower(vessel);
  }

  @Override
  public double[] start() {
    return new double[] {0};
  }

  @Override
  public double[] tolerances() {
    return new double[] {ACCURACY * thickness()};
  }

  @Override
  public double thickness() {
    return vessel.geometry().thickness();
  }

  @Override
  public void holdBefore(double time_s) {
    end = Math.nextDown(time_s);
  }

  @Override
  public void slopes(double at, double[] state, double[] slopes) {
    double rate = solve(at, state[0]);
    double depth = Math.min(state[0], thickness());
    slopes[0] = rate / vessel.geometry().icePerDepth(depth);
  }

  @Override
  public ScheduledRun.Moment moment(double time_s, double[] state) {
    solve(time_s, state[0]);
    FrontState now = front.state(state[0]);
    return new ScheduledRun.Moment(
        time_s, state[0], now.frontTemperature(), now.bottomTemperature(), now.rate());
  }

  private double solve(double at, double depth_m) {
    double time = Math.min(at, end);
    double pressure = schedule.pressure().at(time);
    return front.solve(
        heat.at(schedule.shelf().at(time), pressure),
        pressure,
        FastFront.coldest(pressure),
        depth_m);
  }
}
