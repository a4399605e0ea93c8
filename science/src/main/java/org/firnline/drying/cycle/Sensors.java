package org.firnline.drying.cycle;

import java.util.List;

/**
 * How a dryer's sensors differ from the truth.
 *
 * @param temperatureNoise standard deviation of every temperature reading, K; 0 or more
 * @param pressureNoise relative standard deviation of every pressure reading; 0 or more
 * @param lag time constant of the product thermometers, s; 0 or more
 * @param bias of each product thermometer, K; missing ones have none
 * @param seed of the noise
 */
public record Sensors(
    double temperatureNoise, double pressureNoise, double lag, List<Double> bias, long seed) {

  /** Sensors that read the truth. */
  public static final Sensors PERFECT = new Sensors(0, 0, 0, List.of(), 0);

  public Sensors {
    bias = List.copyOf(bias);
    if (!(temperatureNoise >= 0) || !(pressureNoise >= 0) || !(lag >= 0)) {
      throw new IllegalArgumentException("noise and lag must be 0 or more");
    }
  }

  double bias(int thermometer) {
    return thermometer < bias.size() ? bias.get(thermometer) : 0;
  }
}
