package org.firnline.drying.pressurerise;

import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.SublimationEnthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;

/**
 * The printed manometric equation: P = P_i − (P_i − P₀) e^{−kt} + c P_i ΔT [1 − 0.811
 * exp(−(0.114/L²) t)] + X t, with L the frozen thickness in cm and ΔT the temperature difference
 * across it.
 *
 * <p>c is half of d ln p/dT, 0.0465 1/K as printed; where 0.465 is printed it is a slip of the
 * decimal point. 0.114 cm²/s is π² times the diffusivity of ice, 0.811 is 8/π². At t = 0 the
 * equation does not give P₀ but 0.189 c P_i ΔT more.
 *
 * <p>Valid: 25 s tests as published. Kept to repeat published evaluations; {@link WarmingRise} is
 * the better model.
 *
 * <p>Source: Milton, Pikal, Roy &amp; Nail, PDA J. 51, 7 (1997) (title found, equation from
 * memory).
 */
public final class MiltonEtAl1997Rise implements RiseModel {

  /** 1/K. */
  private static final double HALF_SLOPE = 0.0465;

  private static final double FIRST_MODE = 0.811;

  /** 0.114 cm²/s in m²/s. */
  private static final double DIFFUSION = 0.114e-4;

  private final FrozenLayer layer;
  private final IceVaporPressure ice;
  private final SublimationEnthalpy enthalpy;

  /** With the equations of reference for ice. */
  public MiltonEtAl1997Rise(FrozenLayer layer) {
    this(layer, new WagnerEtAl2011Ice(), new MurphyKoop2005Enthalpy());
  }

  public MiltonEtAl1997Rise(FrozenLayer layer, IceVaporPressure ice, SublimationEnthalpy enthalpy) {
    this.layer = layer;
    this.ice = ice;
    this.enthalpy = enthalpy;
  }

  @Override
  public double[] pressures(RiseSetup setup, RiseState state, double[] times) {
    double rate = setup.fillingRate(state.resistance());
    double front = ice.pressure(state.frontTemperature());
    double start = setup.startPressure();
    double thickness = layer.thickness();
    double heat =
        enthalpy.specific(state.frontTemperature()) * (front - start) / state.resistance();
    double across = heat * thickness / layer.conductivity();
    double mode = DIFFUSION / (thickness * thickness);
    double[] pressures = new double[times.length];
    for (int i = 0; i < times.length; i++) {
      double time = times[i];
      pressures[i] =
          front
              - (front - start) * Math.exp(-rate * time)
              + HALF_SLOPE * front * across * (1 - FIRST_MODE * Math.exp(-mode * time))
              + state.leak() * time;
    }
    return pressures;
  }
}
