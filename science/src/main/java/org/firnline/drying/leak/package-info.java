/**
 * The leak test: an empty, isolated chamber and the pressure in it. Uses {@code evidence} and
 * {@code numerics}. Start reading at {@link org.firnline.drying.leak.LeakTest}.
 */
@NullMarked
package org.firnline.drying.leak;

import org.jspecify.annotations.NullMarked;
