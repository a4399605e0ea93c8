/**
 * The pressure-rise test: for some seconds the chamber is shut off from its collector, and the rise
 * of its pressure tells the temperature of the ice front and the resistance of the cake. Start
 * reading at {@link org.firnline.drying.pressurerise.RiseEvaluation}; the equations are in
 * docs/science.md.
 */
@NullMarked
package org.firnline.drying.pressurerise;

import org.jspecify.annotations.NullMarked;
