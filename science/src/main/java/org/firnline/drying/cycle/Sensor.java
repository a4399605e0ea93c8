package org.firnline.drying.cycle;

/**
 * How a sensor differs from the truth.
 *
 * @param bias added to every value, in the unit of its channel
 * @param relativeNoise standard deviation of noise as a share of the value; 0 or more
 * @param noise standard deviation of noise, in the unit of its channel; 0 or more
 * @param lag time constant of its response, s; 0 or more
 * @param resolution smallest step it shows, in the unit of its channel; 0 shows all digits
 */
public record Sensor(
    double bias, double relativeNoise, double noise, double lag, double resolution) {

  /** A sensor that reads the truth. */
  public static final Sensor TRUE = new Sensor(0, 0, 0, 0, 0);

  public Sensor {
    if (!(relativeNoise >= 0) || !(noise >= 0) || !(lag >= 0) || !(resolution >= 0)) {
      throw new IllegalArgumentException("noise, lag and resolution must be 0 or more");
    }
  }

  /** A thermometer: ± half a tenth of a kelvin, a quarter of a minute late (assumed). */
  public static Sensor thermometer(double bias_K) {
    return new Sensor(bias_K, 0, 0.05, 15, 0.01);
  }

  /** A pressure gauge with noise of half a percent (assumed). */
  public static Sensor gauge() {
    return new Sensor(0, 0.005, 0, 2, 0.001);
  }

  /** What it shows of {@code value} under a standard normal {@code deviation}. */
  double shows(double value, double deviation) {
    double read = value + bias + deviation * Math.hypot(noise, relativeNoise * value);
    return resolution == 0 ? read : Math.rint(read / resolution) * resolution;
  }
}
