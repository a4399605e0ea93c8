package org.firnline.drying.primary;

/**
 * A front on its way.
 *
 * @param time since primary drying began, s
 * @param state the balance then
 */
public record TimedState(double time, FrontState state) {}
