/**
 * Series of samples, kept compactly and exactly as they came. Start reading at {@link
 * org.firnline.app.store.series.KeptSeries}; how a block is packed is in {@link
 * org.firnline.app.store.series.SeriesCodec}.
 */
@NullMarked
package org.firnline.app.store.series;

import org.jspecify.annotations.NullMarked;
