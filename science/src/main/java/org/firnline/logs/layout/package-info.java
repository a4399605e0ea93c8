/**
 * Where the table of a log file stands and what its columns are: delimiter and decimal mark, header
 * rows, names, units, roles.
 *
 * <p>May use: org.firnline.units, org.firnline.logs.channel, .text, .stamp. Start reading at {@link
 * org.firnline.logs.layout.TableFinder}.
 */
@NullMarked
package org.firnline.logs.layout;

import org.jspecify.annotations.NullMarked;
