/**
 * Colleagues' samples in one run: which item rules the temperature, which the time, who holds whom
 * up and what each would gain alone. Uses {@code planning.design}. Start reading at {@link
 * org.firnline.planning.together.SharedRun}.
 */
@NullMarked
package org.firnline.planning.together;

import org.jspecify.annotations.NullMarked;
