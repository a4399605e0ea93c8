package org.firnline.drying.icerun;

import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FrontState;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.drying.primary.Slab;
import org.firnline.numerics.GaussLegendre;
import org.firnline.numerics.Root;

/**
 * What a weighed ice run of a given length would find: ice lost and temperature drive, by
 * quadrature in depth.
 *
 * @param loss kg
 * @param drive ∫(T_shelf − T_b) dt, K s
 * @param frontTemperature of the front half way, K
 */
public record SimulatedIceRun(double loss, double drive, double frontTemperature) {

  private static final double ACCURACY = 1e-12;

  /**
   * Runs for {@code time_s}, which must end before the ice does.
   *
   * @param slab ice in the vessel
   * @param vessel the same with cake (usually none) and mouth
   */
  public static SimulatedIceRun of(
      Slab slab, DryingVessel vessel, HeatSupply supply, double pressure_Pa, double time_s) {
    QuasiSteadyFront front = new QuasiSteadyFront();
    double perDepth = slab.iceMass() / slab.thickness();
    double whole = time(front, vessel, supply, pressure_Pa, slab.thickness(), perDepth);
    if (time_s >= whole) {
      throw new IllegalArgumentException(
          "the ice is gone after " + whole + " s, before the run of " + time_s + " s ends");
    }
    double depth =
        Root.find(
            to -> time(front, vessel, supply, pressure_Pa, to, perDepth) - time_s,
            0,
            slab.thickness());
    double drive =
        GaussLegendre.integrate(
            at -> {
              FrontState state = front.at(vessel, supply, pressure_Pa, at);
              return (supply.temperature() - state.bottomTemperature()) * perDepth / state.rate();
            },
            0,
            depth,
            ACCURACY);
    double middle = front.at(vessel, supply, pressure_Pa, depth / 2).frontTemperature();
    return new SimulatedIceRun(depth * perDepth, drive, middle);
  }

  private static double time(
      QuasiSteadyFront front,
      DryingVessel vessel,
      HeatSupply supply,
      double pressure_Pa,
      double depth_m,
      double perDepth) {
    return GaussLegendre.integrate(
        at -> perDepth / front.at(vessel, supply, pressure_Pa, at).rate(), 0, depth_m, ACCURACY);
  }
}
