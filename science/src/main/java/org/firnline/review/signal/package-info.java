/**
 * Signals on an even time grid: smoothing in time, robust noise, slopes, level crossings. Gaps stay
 * gaps; nothing is interpolated.
 *
 * <p>May use: org.firnline.logs.channel. Start reading at {@link org.firnline.review.signal.Grid}.
 */
@NullMarked
package org.firnline.review.signal;

import org.jspecify.annotations.NullMarked;
