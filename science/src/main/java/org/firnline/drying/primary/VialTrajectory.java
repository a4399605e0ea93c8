package org.firnline.drying.primary;

/**
 * What planning asks of one vessel at constant settings.
 *
 * @param ending how primary drying ends
 * @param time until the last ice is gone, s; infinite where nothing sublimes or drying stalls, NaN
 *     where ice melts first
 * @param warmest greatest temperature of any frozen point on the way, K; the temperature at which
 *     the vessel settles where nothing sublimes, NaN where ice melts
 * @param startRate vapor rate at the first moment, kg/s
 * @param peakRate greatest vapor rate on the way, kg/s
 * @param endRate vapor rate of the last ice, kg/s
 */
public record VialTrajectory(
    Ending ending, double time, double warmest, double startRate, double peakRate, double endRate) {

  /** How it ends; {@link Outcome} carries the details. */
  public enum Ending {
    DRIES,
    NOTHING_SUBLIMES,
    ABOVE_TRIPLE_POINT,
    STALLS,
    MELTS
  }

  /** Nothing leaves the vessel, which settles at {@code temperature_K}. */
  static VialTrajectory idle(double temperature_K) {
    return new VialTrajectory(
        Ending.NOTHING_SUBLIMES, Double.POSITIVE_INFINITY, temperature_K, 0, 0, 0);
  }

  /** Ice turns to liquid before it is gone. */
  static VialTrajectory melting(Ending ending) {
    return new VialTrajectory(ending, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
  }

  public boolean dries() {
    return ending == Ending.DRIES;
  }
}
