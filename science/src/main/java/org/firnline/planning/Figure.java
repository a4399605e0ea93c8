package org.firnline.planning;

import org.firnline.units.QuantityKind;

/**
 * A number in a check, named so that a text in any language can place it.
 *
 * @param name what it is, without unit
 * @param si its value in SI; may be infinite where an event never comes
 * @param kind what it measures
 */
public record Figure(String name, double si, QuantityKind kind) {}
