/**
 * The body of a table becomes columns: every line is kept, flagged, set aside or rejected, and
 * accounted for.
 *
 * <p>May use: org.firnline.logs.channel, .text, .stamp, .layout. Start reading at {@link
 * org.firnline.logs.table.TableReader}.
 */
@NullMarked
package org.firnline.logs.table;

import org.jspecify.annotations.NullMarked;
