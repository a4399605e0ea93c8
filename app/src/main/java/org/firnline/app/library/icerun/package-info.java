/**
 * The weighed ice run as a sheet to print, fill in and read back. Start reading at {@link
 * org.firnline.app.library.icerun.IceRunSheet}.
 */
@NullMarked
package org.firnline.app.library.icerun;

import org.jspecify.annotations.NullMarked;
