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
 * @param started first time in its log, if the log says when it began
 * @param ended last time in its log, likewise
 * @param worst the worst finding of its last review, if it was reviewed
 */
public record KeptRun(
    long id,
    String title,
    long dryerId,
    OptionalLong logFileId,
    OptionalLong planId,
    OptionalDouble criticalTemperature_K,
    Optional<Instant> started,
    Optional<Instant> ended,
    Optional<Worst> worst) {

  /**
   * The worst finding of a review.
   *
   * @param state {@code stop}, {@code watch} or {@code pass}
   * @param text what it is; empty when nothing stood out
   */
  public record Worst(String state, String text) {}
}
