package org.firnline.drying.gauge;

import java.util.OptionalDouble;

/**
 * Marks on the fall of a gauge ratio. A mark that the curve does not reach is empty, which is an
 * answer: the load is not dry, or bleed gas hides it.
 *
 * @param plateau ratio from which the fall is counted
 * @param onset last time at which 90 % of (plateau − 1) are left, s
 * @param midpoint last time at which 50 % are left, s
 * @param end last time at which 10 % are left, s
 */
public record EndMarks(
    double plateau, OptionalDouble onset, OptionalDouble midpoint, OptionalDouble end) {}
