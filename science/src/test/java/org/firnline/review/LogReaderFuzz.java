package org.firnline.review;

import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;

/**
 * What the fuzzer throws at the reader: any bytes. A reading must come out, every line accounted
 * for, and a review if there is a log. {@code ./firnline fuzz} runs it; crashes, hangs and growing
 * memory end it.
 */
public final class LogReaderFuzz {
  private LogReaderFuzz() {}

  /** Reads one input; called by the fuzzer. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    Reading reading = new LogReader().read("fuzz", bytes);
    long counted = reading.rows().kept() + reading.rows().setAside() + reading.rows().rejected();
    if (counted != reading.rows().read()) {
      throw new IllegalStateException("lines lost: " + reading.rows());
    }
    if (reading.log().isEmpty() && reading.problems().isEmpty()) {
      throw new IllegalStateException("neither a log nor a reason");
    }
    reading.log().ifPresent(log -> new Reviewer().review(log, ReviewContext.none()));
  }
}
