/**
 * The pressure-rise test: the valve to the collector shuts for seconds, and the pressure tells the
 * temperature of the ice front. Uses {@code matter} and {@code numerics}. Start reading at {@link
 * org.firnline.drying.pressurerise.PressureRise}.
 */
@NullMarked
package org.firnline.drying.pressurerise;

import org.jspecify.annotations.NullMarked;
