/**
 * Weighed ice runs: the heat transfer of vessels by their position on the shelf, and its course
 * with pressure. Uses {@code drying.icerun}, {@code learning.uncertainty}, {@code lab}, {@code
 * matter} and {@code numerics}. Start reading at {@link org.firnline.learning.icerun.IceRun}.
 */
@NullMarked
package org.firnline.learning.icerun;

import org.jspecify.annotations.NullMarked;
