package org.firnline.drying.load;

/**
 * A chamber pressure at which the load gives off exactly what the dryer carries.
 *
 * @param pressure Pa
 * @param stable whether the pressure comes back after a small disturbance: the load then falls
 *     behind the dryer as pressure rises
 */
public record PressureRoot(double pressure, boolean stable) {}
