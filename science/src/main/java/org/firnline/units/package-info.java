/**
 * Quantities at the edge of the program: reading "80 mTorr" or "-32 °C" into SI numbers, and
 * printing SI numbers in the units a person chose. Uses nothing but the JDK. Start reading at
 * {@link org.firnline.units.Quantity}.
 */
@NullMarked
package org.firnline.units;

import org.jspecify.annotations.NullMarked;
