/**
 * What moisture results and weights teach: the pace of secondary drying, and where the water of a
 * run went. Uses {@code drying.secondary} and {@code numerics}. Start reading at {@link
 * org.firnline.learning.moisture.DesorptionFit}.
 */
@NullMarked
package org.firnline.learning.moisture;

import org.jspecify.annotations.NullMarked;
