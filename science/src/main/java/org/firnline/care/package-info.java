/**
 * The health of a dryer across its runs: figures that every log gives, control charts over them,
 * what changed and when, what is due. Uses {@code logs} and {@code evidence}. Start reading at
 * {@link org.firnline.care.CareFigures} for one run and {@link org.firnline.care.ControlChart} for
 * many.
 */
@NullMarked
package org.firnline.care;

import org.jspecify.annotations.NullMarked;
