package org.firnline.drying.load;

/**
 * A load at one moment.
 *
 * @param time since primary drying began, s
 * @param pressure chamber pressure, Pa
 * @param totalRate vapor of the whole load, kg/s
 * @param warmest warmest frozen point of any vessel, K
 */
public record LoadState(double time, double pressure, double totalRate, double warmest) {}
