/**
 * How the doubt about measured inputs becomes the doubt about a result. Uses {@code numerics}.
 * Start reading at {@link org.firnline.learning.uncertainty.Budget}.
 */
@NullMarked
package org.firnline.learning.uncertainty;

import org.jspecify.annotations.NullMarked;
