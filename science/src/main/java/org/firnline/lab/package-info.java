/**
 * The nouns of the lab: product, vessel, load, dryer, recipe. Immutable records that cannot be
 * built invalid; each uncertain value carries its spread and its origin. Uses {@code units}, {@code
 * evidence} and {@code matter}. Start reading at {@link org.firnline.lab.LoadItem}.
 */
@NullMarked
package org.firnline.lab;

import org.jspecify.annotations.NullMarked;
