package org.firnline.drying.sampling;

/**
 * One sampled run of a load.
 *
 * @param first finish of the first vessel, s; infinite where it never dries or melts
 * @param median finish of half of the vessels, s
 * @param ninetyFivePercent finish of 95 % of the vessels, s
 * @param last finish of the last vessel, s
 * @param warmest greatest temperature of any frozen point in any vessel, K; infinite where one
 *     melts
 * @param peakRate sum of the greatest vapor rates of all vessels, kg/s; NaN where one melts
 */
public record SampledRun(
    double first,
    double median,
    double ninetyFivePercent,
    double last,
    double warmest,
    double peakRate) {}
