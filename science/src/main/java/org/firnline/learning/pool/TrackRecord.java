package org.firnline.learning.pool;

import java.util.ArrayList;
import java.util.List;

/**
 * What predictions have been worth: each run's prediction, made before it, against what happened.
 *
 * @param entries in time order
 */
public record TrackRecord(List<Entry> entries) {

  /**
   * One run.
   *
   * @param run its name
   * @param predicted best value, s; positive
   * @param low lower end of the 90 % band, s
   * @param high upper end of the 90 % band, s
   * @param actual what happened, s; positive
   */
  public record Entry(String run, double predicted, double low, double high, double actual) {

    public Entry {
      if (!(predicted > 0) || !(actual > 0) || !(low <= predicted && predicted <= high)) {
        throw new IllegalArgumentException(
            run + ": predicted " + predicted + " s (" + low + " to " + high + "), was " + actual);
      }
    }

    /** Actual over predicted, minus 1. */
    public double relativeError() {
      return actual / predicted - 1;
    }

    /** Whether the band held what happened. */
    public boolean held() {
      return low <= actual && actual <= high;
    }
  }

  /**
   * Where the record stood after one run.
   *
   * @param run its name
   * @param meanError mean of actual/predicted − 1 so far: positive where runs take longer
   * @param typicalError root mean square of it so far
   * @param coverage share of bands so far that held
   */
  public record Running(String run, double meanError, double typicalError, double coverage) {}

  public TrackRecord {
    entries = List.copyOf(entries);
  }

  /** The record run by run. */
  public List<Running> running() {
    List<Running> running = new ArrayList<>();
    double sum = 0;
    double squares = 0;
    int held = 0;
    for (Entry entry : entries) {
      sum += entry.relativeError();
      squares += entry.relativeError() * entry.relativeError();
      held += entry.held() ? 1 : 0;
      int count = running.size() + 1;
      running.add(
          new Running(entry.run(), sum / count, Math.sqrt(squares / count), (double) held / count));
    }
    return List.copyOf(running);
  }
}
