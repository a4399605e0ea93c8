package org.firnline.drying.dryer;

/** One thing that bounds the vapor a dryer carries away. */
public sealed interface VaporLimit permits VaporDuct, MeasuredLine, CollectorRate {

  /** Which part of the dryer it is. */
  enum Part {
    /** Vapor reaches the speed of sound in the duct, or nearly so. */
    DUCT,
    /** The measured line of this dryer. */
    LINE,
    /** The collector cannot freeze more vapor per time. */
    COLLECTOR,
    /** Nothing known limits this dryer. */
    NOTHING
  }

  /** Which part of the dryer limits. */
  Part part();

  /**
   * Greatest vapor flow at {@code pressure_Pa} in the chamber, kg/s; 0 or more, never falling with
   * pressure.
   */
  double rate(double pressure_Pa);
}
