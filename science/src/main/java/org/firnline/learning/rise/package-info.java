/**
 * Pressure-rise tests as evidence: which values a test determines and whether it can still be
 * trusted. Uses {@code drying.pressurerise}. Start reading at {@link
 * org.firnline.learning.rise.RiseLesson}.
 */
@NullMarked
package org.firnline.learning.rise;

import org.jspecify.annotations.NullMarked;
