/**
 * Decisions before a run: which settings, how long, what may go wrong and how sure all of that is.
 * Uses {@code drying}, {@code lab}, {@code numerics} and what lies under them. Start reading at
 * {@link org.firnline.planning.Planner}.
 */
@NullMarked
package org.firnline.planning;

import org.jspecify.annotations.NullMarked;
