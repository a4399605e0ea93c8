/**
 * What predictions have been worth, run by run. Start reading at {@link
 * org.firnline.app.library.history.HistoryPage}.
 */
@NullMarked
package org.firnline.app.library.history;

import org.jspecify.annotations.NullMarked;
