/**
 * The weighed ice run: how well a vessel takes heat from a shelf, from the ice it loses. Uses
 * {@code drying.primary}, {@code evidence}, {@code matter} and {@code numerics}. Start reading at
 * {@link org.firnline.drying.icerun.WeighedIceRun}.
 */
@NullMarked
package org.firnline.drying.icerun;

import org.jspecify.annotations.NullMarked;
