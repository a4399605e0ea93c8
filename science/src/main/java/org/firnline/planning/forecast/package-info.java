/**
 * What a program of settings does to a whole load, with its doubt: a few vessels stand for each
 * item, runs are drawn from the stated spreads, and each is marched through primary drying on the
 * shared chamber pressure. Uses {@code drying}, {@code lab} and {@code numerics}. Start reading at
 * {@link org.firnline.planning.forecast.LoadForecaster}.
 */
@NullMarked
package org.firnline.planning.forecast;

import org.jspecify.annotations.NullMarked;
