package org.firnline.lab;

import java.util.function.Function;

/** How much vapor a dryer carries from the chamber to its collector at a given chamber pressure. */
public sealed interface Capability {

  /** The answer of the function that fits this kind of capability. */
  <T> T fold(Function<Duct, T> duct, Function<Line, T> line);

  /**
   * A duct between chamber and collector in which the vapor chokes at the speed of sound.
   *
   * @param area cross-section, m2; positive
   * @param dischargeCoefficient share of the ideal flow that passes, above 0 to 1; 0.7 to 0.9 usual
   *     (from memory)
   * @param vaporTemperature temperature of the vapor in the duct, K; 293 unless known (±4 % flow)
   */
  record Duct(double area, double dischargeCoefficient, double vaporTemperature)
      implements Capability {

    public Duct {
      Check.positive(area, "duct area", "m2");
      Check.positive(dischargeCoefficient, "discharge coefficient", "");
      Check.that(
          dischargeCoefficient <= 1,
          "discharge-range",
          "discharge coefficient",
          "discharge coefficient " + dischargeCoefficient,
          "cannot exceed 1",
          "give for instance 0.8");
      Check.positive(vaporTemperature, "vapor temperature", "K");
    }

    @Override
    public <T> T fold(Function<Duct, T> duct, Function<Line, T> line) {
      return duct.apply(this);
    }
  }

  /**
   * A measured straight line: flow = slope (pressure − threshold).
   *
   * @param slope kg/(s Pa); positive
   * @param threshold chamber pressure at which nothing passes, Pa; 0 or more
   */
  record Line(double slope, double threshold) implements Capability {

    public Line {
      Check.positive(slope, "slope of the capability line", "kg/(s Pa)");
      Check.notNegative(threshold, "threshold of the capability line", "Pa");
    }

    @Override
    public <T> T fold(Function<Duct, T> duct, Function<Line, T> line) {
      return line.apply(this);
    }
  }
}
