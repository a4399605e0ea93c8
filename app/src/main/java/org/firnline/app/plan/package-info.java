/**
 * Plan: questions on one side, pictures, checks and the recipe card on the other, live as values
 * change. Start reading at {@link org.firnline.app.plan.PlanPage}.
 */
@NullMarked
package org.firnline.app.plan;

import org.jspecify.annotations.NullMarked;
