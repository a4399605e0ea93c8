package org.firnline.lab;

import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;

/** A pressure gauge on the chamber. The kinds differ in what they read in water vapor. */
public sealed interface Gauge {

  /** What the lab calls it; not blank. */
  String name();

  /** Its reading in pure water vapor over the true pressure, minus 1; best value. */
  double excess();

  /**
   * A capacitance diaphragm: reads the true pressure of any gas.
   *
   * @param name what the lab calls it
   */
  record Capacitance(String name) implements Gauge {

    public Capacitance {
      Check.named(name, "gauge name");
    }

    @Override
    public double excess() {
      return 0;
    }
  }

  /**
   * A hot wire calibrated for nitrogen: reads too much in water vapor, by a factor that differs
   * from gauge to gauge and is learned from its own runs.
   *
   * @param name what the lab calls it
   * @param vaporExcess g: its reading in pure vapor over the true pressure, minus 1; best positive
   */
  record ThermalConductivity(String name, Estimate vaporExcess) implements Gauge {

    /** Published for gauges in general: 0.5 to 1.0. */
    private static final double PUBLISHED_EXCESS = 0.6;

    private static final double PUBLISHED_SPREAD = 0.2;

    public ThermalConductivity {
      Check.named(name, "gauge name");
      Check.positive(vaporExcess.best(), "vapor excess of the gauge", "");
    }

    @Override
    public double excess() {
      return vaporExcess.best();
    }

    /** A gauge of which nothing is known yet but what is published for its kind. */
    public static ThermalConductivity unlearned(String name) {
      return new ThermalConductivity(
          name,
          new Estimate(
              PUBLISHED_EXCESS,
              PUBLISHED_SPREAD,
              new Provenance.Published(
                  new Source(
                      "Patel, Doen & Pikal, AAPS PharmSciTech 11, 73 (2010), about 0.6; makers of gauges print 1.0",
                      Source.Status.FROM_MEMORY))));
    }
  }
}
