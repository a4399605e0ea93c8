/**
 * How long freezing takes. Uses nothing but the JDK. Start reading at {@link
 * org.firnline.drying.freezing.Plank1913}.
 */
@NullMarked
package org.firnline.drying.freezing;

import org.jspecify.annotations.NullMarked;
