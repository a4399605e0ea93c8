/**
 * Secondary drying: how the cake loses the water it still holds, and whether it stays a glass
 * meanwhile. Uses {@code drying.recipe}, {@code matter} and {@code numerics}. Start reading at
 * {@link org.firnline.drying.secondary.SecondaryDrying}.
 */
@NullMarked
package org.firnline.drying.secondary;

import org.jspecify.annotations.NullMarked;
