/**
 * The batch door for specialists: fully specified cases in, numbers out, nothing assumed. Uses
 * science only. Start reading at {@link org.firnline.app.solve.CaseFile}.
 */
@NullMarked
package org.firnline.app.solve;

import org.jspecify.annotations.NullMarked;
