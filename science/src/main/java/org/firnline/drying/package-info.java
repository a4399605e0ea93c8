/**
 * The physics of freeze-drying, one sub-package per part: {@code freezing}; {@code primary}, the
 * front that retreats through the ice; {@code secondary}; the {@code dryer}, a {@code load} on it,
 * settings that change ({@code recipe}) and the whole {@code cycle}; {@code vessel}, which turns
 * nouns of the lab into these; small tests ({@code pressurerise}, {@code leak}, {@code icerun}) and
 * what gauges read ({@code gauge}). Uses {@code lab}, {@code matter}, {@code numerics}, {@code
 * evidence} and {@code units}. Start reading at {@link org.firnline.drying.primary.PrimaryDrying};
 * the equations are in docs/science.md.
 */
@NullMarked
package org.firnline.drying;

import org.jspecify.annotations.NullMarked;
