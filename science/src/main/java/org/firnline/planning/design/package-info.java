/**
 * Finds the recipe: steps of primary drying cut from the ideal trajectory, with freezing,
 * evacuation, secondary drying and backfill around them, beside the plain hold and the rule of
 * thumb. Nothing is proposed that the forecast has not confirmed. Uses {@code planning.forecast}
 * and what lies under it. Start reading at {@link org.firnline.planning.design.RecipeDesigner}.
 */
@NullMarked
package org.firnline.planning.design;

import org.jspecify.annotations.NullMarked;
