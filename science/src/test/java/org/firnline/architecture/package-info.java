/** The rules of the house as tests: what may use what, and which shapes code takes. */
@NullMarked
package org.firnline.architecture;

import org.jspecify.annotations.NullMarked;
