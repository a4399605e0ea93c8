package org.firnline.drying.dryer;

/**
 * A collector that freezes only so much vapor per time, whatever the chamber pressure.
 *
 * @param greatest kg/s; positive, may be infinite
 */
public record CollectorRate(double greatest) implements VaporLimit {

  public CollectorRate {
    if (!(greatest > 0)) {
      throw new IllegalArgumentException("collector rate " + greatest + " is not positive");
    }
  }

  @Override
  public Part part() {
    return Part.COLLECTOR;
  }

  @Override
  public double rate(double pressure_Pa) {
    return greatest;
  }
}
