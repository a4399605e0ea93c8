package org.firnline.planning.doubt;

/**
 * What a measurement would do to the bands.
 *
 * @param measurement the small test
 * @param timeBand width of the band of the finish after it over before; below 1 is narrower
 * @param marginBand the same of the distance to the critical temperature
 * @param risk share of the drawn runs above the critical temperature after it, if it finds the best
 *     value confirmed
 */
public record Narrowed(Measurement measurement, double timeBand, double marginBand, double risk) {

  /** The narrower of both. */
  public double best() {
    return Math.min(timeBand, marginBand);
  }
}
