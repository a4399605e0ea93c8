package org.firnline.drying.pressurerise;

import org.firnline.evidence.Estimate;

/**
 * What a pressure-rise test tells.
 *
 * @param frontTemperature T_i when the valve shut, K
 * @param resistance cake and mouth together on the product area, m/s
 * @param leak rise by leaks and degassing, Pa/s; as given where it was not left free
 * @param misfit root mean square of the residuals, Pa
 */
public record RiseEstimate(
    Estimate frontTemperature, Estimate resistance, Estimate leak, double misfit) {}
