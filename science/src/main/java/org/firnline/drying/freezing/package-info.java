/**
 * Freezing on a shelf: cooling, supercooling until ice appears by chance, a front that moves up
 * from the bottom, cooling of the frozen mass. Start reading at {@link
 * org.firnline.drying.freezing.VesselFreezing}; the equations are in docs/science.md.
 */
@NullMarked
package org.firnline.drying.freezing;

import org.jspecify.annotations.NullMarked;
