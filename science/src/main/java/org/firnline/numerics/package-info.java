/**
 * The one door to the mathematics library, with answers that say how they were reached. No other
 * package imports the library. Start reading at {@link org.firnline.numerics.Root}.
 */
@NullMarked
package org.firnline.numerics;

import org.jspecify.annotations.NullMarked;
