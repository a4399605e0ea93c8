/**
 * Primary drying, quasi-steady: at every dried depth the heat that arrives at the ice front equals
 * the heat that the vapor carries away. Start reading at {@link
 * org.firnline.drying.primary.PrimaryDrying}; the equations are in docs/science.md.
 */
@NullMarked
package org.firnline.drying.primary;

import org.jspecify.annotations.NullMarked;
