/**
 * From bytes to cells: character sets, lines, delimiters, numbers as people and machines write
 * them.
 *
 * <p>May use: org.firnline.logs.channel. Start reading at {@link org.firnline.logs.text.Lines}.
 */
@NullMarked
package org.firnline.logs.text;

import org.jspecify.annotations.NullMarked;
