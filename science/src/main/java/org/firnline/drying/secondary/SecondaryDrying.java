package org.firnline.drying.secondary;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.firnline.drying.recipe.Track;
import org.firnline.matter.solute.GordonTaylor1952;
import org.firnline.numerics.GaussLegendre;
import org.firnline.numerics.Peak;
import org.firnline.numerics.Root;

/**
 * Moisture of a cake whose temperature follows a track: C(t) = C_eq + (C_0 − C_eq) exp(−∫k dt).
 *
 * <p>Assumes the cake has the temperature of the track; heat of desorption is left out.
 *
 * <p>Source: integral of the first-order law; derivation in docs/science.md.
 *
 * @param desorption how the cake loses water
 * @param start C_0, kg of water per kg of solids; not below the equilibrium
 * @param temperature of the product over time, K
 */
public record SecondaryDrying(Desorption desorption, double start, Track temperature) {

  private static final double ACCURACY = 1e-12;

  /** Times closer than this share are one. */
  private static final double SAME = 1e-9;

  /** Nobody waits longer, s: a year. */
  private static final double LONGEST_S = 365.25 * 86_400;

  /**
   * The nearest the cake comes to softening.
   *
   * @param margin least T_g − T, K; negative where the cake softens
   * @param time when, s
   */
  public record GlassMargin(double margin, double time) {}

  public SecondaryDrying {
    if (!(start >= desorption.equilibrium())) {
      throw new IllegalArgumentException(
          "moisture " + start + " at the start is below its equilibrium");
    }
  }

  /** Moisture after {@code time_s}, kg of water per kg of solids. */
  public double moisture(double time_s) {
    double excess = start - desorption.equilibrium();
    return desorption.equilibrium() + excess * Math.exp(-exposure(time_s));
  }

  /**
   * When the moisture falls to {@code target}, s; empty if it never does: the target lies at or
   * below the equilibrium, or more than a year away.
   */
  public OptionalDouble timeTo(double target) {
    if (target >= start) {
      return OptionalDouble.of(0);
    }
    if (target <= desorption.equilibrium()) {
      return OptionalDouble.empty();
    }
    double wanted =
        Math.log((start - desorption.equilibrium()) / (target - desorption.equilibrium()));
    double low = 0;
    double high = 3_600;
    while (exposure(high) < wanted) {
      if (high >= LONGEST_S) {
        return OptionalDouble.empty();
      }
      low = high;
      high = Math.min(LONGEST_S, 2 * high);
    }
    return OptionalDouble.of(Root.find(time -> exposure(time) - wanted, low, high));
  }

  /** The least distance between glass transition and temperature until {@code end_s}. */
  public GlassMargin leastMargin(GordonTaylor1952 glass, double end_s) {
    GlassMargin least = new GlassMargin(margin(glass, 0), 0);
    double from = 0;
    for (double to : bendsUntil(end_s)) {
      double at = to > from ? Peak.location(time -> -margin(glass, time), from, to) : to;
      for (double time : new double[] {at, to}) {
        double margin = margin(glass, time);
        if (margin < least.margin()) {
          least = new GlassMargin(margin, time);
        }
      }
      from = to;
    }
    return least;
  }

  private double margin(GordonTaylor1952 glass, double time_s) {
    return glass.atMoisture(moisture(time_s)) - temperature.at(time_s);
  }

  /** ∫k dt from 0 to {@code time_s}, over the straight pieces of the track one by one. */
  private double exposure(double time_s) {
    double sum = 0;
    double from = 0;
    for (double to : bendsUntil(time_s)) {
      sum +=
          GaussLegendre.integrate(
              time -> desorption.rate(temperature.at(Math.min(time, to))), from, to, ACCURACY);
      from = to;
    }
    return sum;
  }

  private double[] bendsUntil(double end_s) {
    return DoubleStream.concat(Arrays.stream(temperature.bends()), DoubleStream.of(end_s))
        .filter(time -> time > 0 && (time == end_s || time < end_s * (1 - SAME)))
        .sorted()
        .distinct()
        .toArray();
  }
}
