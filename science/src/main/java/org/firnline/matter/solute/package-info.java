/**
 * What is dissolved or dried: published critical temperatures of solutes, foods and biological
 * material, and the glass transition of moist solids. Uses {@code matter}, {@code evidence} and
 * {@code units}. Start reading at {@link org.firnline.matter.solute.PublishedTemperatures}.
 */
@NullMarked
package org.firnline.matter.solute;

import org.jspecify.annotations.NullMarked;
