package org.firnline.planning.design;

import java.util.OptionalDouble;

/**
 * One step of primary drying as it is typed.
 *
 * @param shelf_K shelf temperature
 * @param pressure_Pa chamber pressure; empty where the dryer leaves it to float
 * @param ramp_K_per_s rate at which the shelf goes there
 * @param duration_s ramp and hold together; the last step lasts until nine in ten of the drawn runs
 *     are dry (upper end of the band)
 */
public record PrimaryStep(
    double shelf_K, OptionalDouble pressure_Pa, double ramp_K_per_s, double duration_s) {}
