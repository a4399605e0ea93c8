package org.firnline.app.reading;

import java.util.Optional;
import org.firnline.app.store.KeptRun;
import org.firnline.app.store.RawFile;
import org.firnline.logs.Log;
import org.firnline.logs.Reading;
import org.firnline.review.Review;

/**
 * A run with everything its log says.
 *
 * @param run as stored
 * @param file its log as it arrived
 * @param reading how the log was read
 * @param review what happened; empty when the log could not be read
 */
public record ReviewedRun(KeptRun run, RawFile file, Reading reading, Optional<Review> review) {

  /** The log, if it could be read. */
  public Optional<Log> log() {
    return reading.log();
  }
}
