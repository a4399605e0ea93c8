package org.firnline.planning.doubt;

import org.firnline.evidence.Source;
import org.firnline.planning.Unknown;

/**
 * A small test that settles one unknown, with what is left of the doubt after it. What is left is
 * from memory of what the trade reports; the effort is in hours of attended work, by common
 * practice.
 */
public enum Measurement {
  /** Weigh vials of water before and after a third of the ice is gone: K_v. */
  WEIGHED_ICE_RUN(Unknown.HEAT_TRANSFER, 0.05, 3),
  /** Shut the valve for seconds now and then in the next run, or watch one thermometer: R_p. */
  PRESSURE_RISE_TEST(Unknown.CAKE_RESISTANCE, 0.10, 1),
  /** A drop under the freeze-drying microscope, or a thermal scan: the critical temperature, K. */
  MICROSCOPE(Unknown.CRITICAL_TEMPERATURE, 0.5, 4);

  private final Unknown settles;
  private final double spreadAfter;
  private final double effort;

  Measurement(Unknown settles, double spreadAfter, double effort) {
    this.settles = settles;
    this.spreadAfter = spreadAfter;
    this.effort = effort;
  }

  /** Where the figures come from. */
  public Source source() {
    return new Source("what laboratories report of such tests", Source.Status.FROM_MEMORY);
  }

  /** What it measures. */
  public Unknown settles() {
    return settles;
  }

  /** Standard deviation left: relative, for a temperature in K. */
  public double spreadAfter() {
    return spreadAfter;
  }

  /** Attended work, h. */
  public double effort_h() {
    return effort;
  }
}
