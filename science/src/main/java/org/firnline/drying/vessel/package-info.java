/**
 * From the nouns of the lab to what drying computes with: which shape the ice has in a vial, a
 * tray, a flask or a piece, and where its heat comes from. Uses {@code lab} and {@code
 * drying.primary}. Start reading at {@link org.firnline.drying.vessel.LoadedVessel}.
 */
@NullMarked
package org.firnline.drying.vessel;

import org.jspecify.annotations.NullMarked;
