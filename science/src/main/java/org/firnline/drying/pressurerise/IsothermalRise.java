package org.firnline.drying.pressurerise;

import java.util.Arrays;
import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.WagnerEtAl2011Ice;

/**
 * {@link PressureRise} as a model to fit: ice that keeps its temperature.
 *
 * <p>Assumes that the front stays as cold as it was. In truth it warms by up to a kelvin in half a
 * minute, which {@link WarmingRise} follows.
 *
 * <p>Valid: the first seconds of a test.
 *
 * <p>Source: mass balance of the chamber, derivation in docs/science.md.
 */
public final class IsothermalRise implements RiseModel {

  private final IceVaporPressure ice;

  /** With the equation of reference for ice. */
  public IsothermalRise() {
    this(new WagnerEtAl2011Ice());
  }

  public IsothermalRise(IceVaporPressure ice) {
    this.ice = ice;
  }

  @Override
  public double[] pressures(RiseSetup setup, RiseState state, double[] times) {
    var rise =
        new PressureRise(
            ice.pressure(state.frontTemperature()),
            setup.startPressure(),
            setup.fillingRate(state.resistance()),
            state.leak());
    return Arrays.stream(times).map(rise::at).toArray();
  }
}
