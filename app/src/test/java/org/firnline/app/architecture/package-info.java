/** The rules of the program's house as tests; those of science stand beside science. */
@NullMarked
package org.firnline.app.architecture;

import org.jspecify.annotations.NullMarked;
