/**
 * One vessel under settings that change in time: shelf ramps and holds, chamber pressure from point
 * to point, with or without the heat that the vessel itself stores. Uses {@code drying.primary} and
 * {@code numerics}. Start reading at {@link org.firnline.drying.recipe.ScheduledDrying}.
 */
@NullMarked
package org.firnline.drying.recipe;

import org.jspecify.annotations.NullMarked;
