package org.firnline.drying.load;

/** How a dryer sets its chamber pressure. */
public sealed interface PressureControl {

  /**
   * Bleed gas or a valve holds a set point as long as the dryer carries the load there.
   *
   * @param setPoint Pa; positive
   */
  record Held(double setPoint) implements PressureControl {

    public Held {
      if (!(setPoint > 0)) {
        throw new IllegalArgumentException("pressure set point " + setPoint + " is not positive");
      }
    }
  }

  /** Nothing holds the pressure: it floats wherever load and dryer meet. */
  record Floating() implements PressureControl {}
}
