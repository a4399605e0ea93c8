package org.firnline.app.store;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A run as stored; what its log says is read from the log.
 *
 * @param id its number
 * @param title what people call it
 * @param dryerId the dryer it ran on
 * @param logFileId its log, once there is one
 * @param planId the plan it followed, if chosen
 * @param criticalTemperature_K the limit its product must stay under, K, if chosen
 * @param started first time in its log, if the log could be read
 */
public record KeptRun(
    long id,
    String title,
    long dryerId,
    OptionalLong logFileId,
    OptionalLong planId,
    OptionalDouble criticalTemperature_K,
    Optional<Instant> started) {}
