/**
 * The five questions that can be answered in a minute without a log: layer and area, drying time,
 * pressure against the collector, water against the collector, warm-up after a failure. Small
 * values and closed forms; the time comes from the same drying kernel as a whole plan. Uses {@code
 * drying}, {@code matter} and {@code evidence}. Start reading at {@link
 * org.firnline.planning.ask.FlaskLayers}.
 */
@NullMarked
package org.firnline.planning.ask;

import org.jspecify.annotations.NullMarked;
