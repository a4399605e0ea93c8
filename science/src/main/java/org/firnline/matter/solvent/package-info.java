/**
 * Organic solvents, acids and bases that leave with the water: whether a collector holds them and
 * what they do to pump and seals. Uses {@code matter}, {@code evidence} and {@code units}. Start
 * reading at {@link org.firnline.matter.solvent.Solvent}.
 */
@NullMarked
package org.firnline.matter.solvent;

import org.jspecify.annotations.NullMarked;
