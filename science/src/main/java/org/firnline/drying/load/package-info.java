/**
 * Many vessels on one dryer: they share shelf, chamber pressure and collector, so that what one
 * gives off moves all. Uses {@code drying.primary}, {@code drying.dryer} and {@code numerics}.
 * Start reading at {@link org.firnline.drying.load.CoupledDrying}.
 */
@NullMarked
package org.firnline.drying.load;

import org.jspecify.annotations.NullMarked;
