/**
 * The physics of freeze-drying, one sub-package per part: {@code primary} is the front that
 * retreats through the ice. Uses {@code lab}, {@code matter}, {@code numerics}, {@code evidence}
 * and {@code units}. Start reading at {@link org.firnline.drying.primary.PrimaryDrying}.
 */
@NullMarked
package org.firnline.drying;

import org.jspecify.annotations.NullMarked;
