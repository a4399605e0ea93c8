/**
 * A whole cycle from filling to backfill, vessel by vessel and with the dryer around them: what a
 * good dryer would log, with the truth beside it. Uses the other parts of {@code drying}, {@code
 * lab}, {@code matter} and {@code numerics}. Start reading at {@link
 * org.firnline.drying.cycle.CycleSimulation}; the equations are in docs/science.md.
 */
@NullMarked
package org.firnline.drying.cycle;

import org.jspecify.annotations.NullMarked;
