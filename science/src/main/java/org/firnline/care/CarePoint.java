package org.firnline.care;

import java.time.Instant;
import java.util.Objects;

/**
 * One figure of one run.
 *
 * @param figure which
 * @param at when the run started, UTC
 * @param run what people call the run
 * @param value SI, in {@link CareFigure#unit()}
 */
public record CarePoint(CareFigure figure, Instant at, String run, double value) {

  public CarePoint {
    Objects.requireNonNull(figure, "figure");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(run, "run");
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(figure.label() + " of " + run + " is " + value);
    }
  }
}
