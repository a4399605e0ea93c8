/**
 * Water as ice, liquid and vapor, and what is dissolved in it: one class per published model. Uses
 * {@code units}, {@code evidence} and {@code numerics}. Start reading at {@link
 * org.firnline.matter.IceVaporPressure}.
 */
@NullMarked
package org.firnline.matter;

import org.jspecify.annotations.NullMarked;
