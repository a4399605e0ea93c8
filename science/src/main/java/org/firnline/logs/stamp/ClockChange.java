package org.firnline.logs.stamp;

/**
 * A place where the logger's clock was set.
 *
 * @param row first row of the new clock
 * @param step_ms what the clock jumped by, negative if it was set back; milliseconds
 */
public record ClockChange(int row, long step_ms) {}
