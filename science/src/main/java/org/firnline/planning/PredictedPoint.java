package org.firnline.planning;

import org.firnline.evidence.Band;

/**
 * The predicted run at one time.
 *
 * @param time_s since primary drying began
 * @param productTemperature_K warmest frozen point of a typical vessel, with its doubt
 * @param driedFraction share of the ice gone from a typical vessel, with its doubt
 * @param rate_kg_per_s vapor rate of the whole load at the best values
 */
public record PredictedPoint(
    double time_s, Band productTemperature_K, Band driedFraction, double rate_kg_per_s) {}
