/**
 * Time stamps as logs write them: dates in any order and language, clock times, elapsed times,
 * epochs, spreadsheet serials; and logger clocks that jump.
 *
 * <p>May use: org.firnline.logs.channel, org.firnline.logs.text. Start reading at {@link
 * org.firnline.logs.stamp.StampScan}.
 */
@NullMarked
package org.firnline.logs.stamp;

import org.jspecify.annotations.NullMarked;
