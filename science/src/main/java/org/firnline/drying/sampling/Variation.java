package org.firnline.drying.sampling;

/**
 * The two levels of variation: factors are lognormal with median 1, the fill is normal about 1.
 *
 * @param betweenRuns what is not known about the load as a whole, the same for all its vessels
 * @param betweenVessels how vessels at the same kind of place differ
 */
public record Variation(Spread betweenRuns, Spread betweenVessels) {}
