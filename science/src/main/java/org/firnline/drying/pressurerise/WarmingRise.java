package org.firnline.drying.pressurerise;

import java.util.Arrays;
import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.SublimationEnthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;
import org.firnline.numerics.DormandPrince5;

/**
 * Pressure rise over ice that warms because less vapor carries its heat away: the heat equation in
 * the frozen layer together with the balance of the chamber.
 *
 * <p>Before the test the layer is steady; during it the heat that enters at the bottom stays the
 * same and the front gives off ΔH (p_i − P)/R.
 *
 * <p>Assumes equal vessels, a flat layer, no heat into the vapor. Solved by finite volumes in
 * {@code cells} layers; the error falls with their number squared and is below 1e-4 of the rise for
 * 20.
 *
 * <p>Valid: tests up to about a minute while ice covers the base; the resistance is reliable in the
 * first half of drying only (Hottot et al., PDA J. 59, 138 (2005)).
 *
 * <p>Source: heat equation, derivation in docs/science.md.
 */
public final class WarmingRise implements RiseModel {

  private static final int CELLS = 20;
  private static final double ACCURACY = 1e-9;
  private static final double LEAST_STEP = 1e-9;

  private final FrozenLayer layer;
  private final IceVaporPressure ice;
  private final SublimationEnthalpy enthalpy;
  private final int cells;

  /** With the equations of reference for ice. */
  public WarmingRise(FrozenLayer layer) {
    this(layer, new WagnerEtAl2011Ice(), new MurphyKoop2005Enthalpy(), CELLS);
  }

  WarmingRise(FrozenLayer layer, IceVaporPressure ice, SublimationEnthalpy enthalpy, int cells) {
    this.layer = layer;
    this.ice = ice;
    this.enthalpy = enthalpy;
    this.cells = cells;
  }

  @Override
  public double[] pressures(RiseSetup setup, RiseState state, double[] times) {
    double front = state.frontTemperature();
    double heat = heat(front, setup.startPressure(), state.resistance());
    double[] values = new double[cells + 2];
    double width = layer.thickness() / cells;
    for (int node = 0; node <= cells; node++) {
      values[node] = front + heat * node * width / layer.conductivity();
    }
    values[cells + 1] = setup.startPressure();
    var equations =
        new DormandPrince5(
            (time, now, slopes) -> slopes(setup, state, heat, now, slopes), ACCURACY, allowed());
    double[] pressures = new double[times.length];
    double now = 0;
    for (int i = 0; i < times.length; i++) {
      equations.march(now, times[i], values);
      now = times[i];
      pressures[i] = values[cells + 1];
    }
    return pressures;
  }

  /** Nodes from the front (0) to the bottom, half a cell at either end, then the pressure. */
  private void slopes(
      RiseSetup setup, RiseState state, double bottomHeat, double[] now, double[] slopes) {
    double width = layer.thickness() / cells;
    double pressure = now[cells + 1];
    double capacity = layer.heatPerVolume() * width;
    double up = -heat(now[0], pressure, state.resistance());
    for (int node = 0; node <= cells; node++) {
      boolean bottom = node == cells;
      double down =
          bottom ? bottomHeat : layer.conductivity() * (now[node + 1] - now[node]) / width;
      double share = node == 0 || bottom ? 0.5 : 1;
      slopes[node] = (up + down) / (share * capacity);
      up = -down;
    }
    double flux = (frontPressure(now[0]) - pressure) / state.resistance();
    slopes[cells + 1] = setup.risePerFlux() * flux + state.leak();
  }

  private double heat(double front_K, double pressure_Pa, double resistance) {
    double flux = (frontPressure(front_K) - pressure_Pa) / resistance;
    return enthalpy.specific(Math.min(front_K, Water.TRIPLE_POINT_TEMPERATURE)) * flux;
  }

  /** Trial steps may overshoot the triple point, where ice ends. */
  private double frontPressure(double front_K) {
    return ice.pressure(Math.min(front_K, Water.TRIPLE_POINT_TEMPERATURE));
  }

  private double[] allowed() {
    double[] allowed = new double[cells + 2];
    Arrays.fill(allowed, LEAST_STEP);
    return allowed;
  }
}
