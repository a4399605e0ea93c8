package org.firnline.app.store;

import java.time.Instant;
import java.util.Optional;

/**
 * The last review of a run in a line, so that lists need not read its log.
 *
 * @param started first time in the log; empty where the log does not say when it began
 * @param ended last time in the log; empty likewise
 * @param worstState {@code stop}, {@code watch} or {@code pass}
 * @param worstText what the worst finding is; empty when nothing stood out
 */
public record RunSummary(
    Optional<Instant> started, Optional<Instant> ended, String worstState, String worstText) {}
