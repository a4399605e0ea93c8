/**
 * From a kept log to what it says: reads and reviews runs, and remembers the latest answers so that
 * pages stay quick. Knows no feature. Start reading at {@link
 * org.firnline.app.reading.ReviewedRuns}.
 */
@NullMarked
package org.firnline.app.reading;

import org.jspecify.annotations.NullMarked;
