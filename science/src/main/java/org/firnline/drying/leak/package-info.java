/**
 * The leak test: the pressure of an empty, dry, isolated chamber rises straight by a leak and along
 * a bending curve by what its walls give off. Start reading at {@link
 * org.firnline.drying.leak.LeakEvaluation}.
 */
@NullMarked
package org.firnline.drying.leak;

import org.jspecify.annotations.NullMarked;
