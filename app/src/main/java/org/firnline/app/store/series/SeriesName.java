package org.firnline.app.store.series;

/**
 * A series without its samples.
 *
 * @param id its number
 * @param channel the channel, as written by its source
 * @param unit the unit its values are in, as written by its source
 */
public record SeriesName(long id, String channel, String unit) {}
