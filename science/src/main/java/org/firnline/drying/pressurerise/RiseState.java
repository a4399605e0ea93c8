package org.firnline.drying.pressurerise;

/**
 * What a pressure-rise test looks for.
 *
 * @param frontTemperature T_i when the valve shuts, K
 * @param resistance cake and mouth together on the product area, m/s
 * @param leak rise by leaks and degassing, X, Pa/s
 */
public record RiseState(double frontTemperature, double resistance, double leak) {}
