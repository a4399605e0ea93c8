/**
 * How vessels of a load differ, and how little is known about the load: two levels, kept apart.
 * Uses {@code drying.load}, {@code drying.primary} and {@code numerics}. Start reading at {@link
 * org.firnline.drying.sampling.LoadSampling}.
 */
@NullMarked
package org.firnline.drying.sampling;

import org.jspecify.annotations.NullMarked;
