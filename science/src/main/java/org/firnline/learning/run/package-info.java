/**
 * What a whole run tells about heat transfer and cake resistance: least squares on the transient
 * model of drying with priors, and a word on what the data cannot tell apart. Uses {@code
 * drying.recipe}, {@code drying.vessel}, {@code review}, {@code logs}, {@code lab} and {@code
 * numerics}. Start reading at {@link org.firnline.learning.run.RunFit}.
 */
@NullMarked
package org.firnline.learning.run;

import org.jspecify.annotations.NullMarked;
