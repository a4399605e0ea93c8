package org.firnline.drying.secondary;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.firnline.drying.recipe.Track;
import org.firnline.matter.solute.GordonTaylor1952;
import org.firnline.numerics.DormandPrince5;
import org.firnline.numerics.GaussLegendre;
import org.firnline.numerics.Peak;
import org.firnline.numerics.Root;

/**
 * Moisture of a cake whose temperature follows a track. With a constant equilibrium C(t) = C_eq +
 * (C_0 − C_eq) exp(−∫k dt); where the equilibrium changes with temperature the law is marched along
 * the bends of the track.
 *
 * <p>Assumes the cake has the temperature of the track; heat of desorption is left out.
 *
 * <p>Valid: after the last ice, below the glass transition.
 *
 * <p>Source: integral of the first-order law; derivation in docs/science.md.
 *
 * @param desorption how the cake loses water
 * @param start C_0, kg of water per kg of solids; 0 or more
 * @param temperature of the product over time, K
 */
public record SecondaryDrying(Desorption desorption, double start, Track temperature) {

  private static final double ACCURACY = 1e-12;
  private static final double LEAST_MOISTURE = 1e-15;

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
    if (!(start >= 0) || Double.isInfinite(start)) {
      throw new IllegalArgumentException(
          "moisture " + start + " at the start is no finite 0 or more");
    }
  }

  /** Moisture after {@code time_s}, kg of water per kg of solids. */
  public double moisture(double time_s) {
    double last = lastBend();
    double inMotion = Math.min(time_s, last);
    double moisture = moving(inMotion);
    if (time_s <= last) {
      return moisture;
    }
    double hold = temperature.at(last);
    double equilibrium = desorption.equilibrium().at(hold);
    double gone = desorption.rate(hold) * (time_s - last);
    return equilibrium + (moisture - equilibrium) * Math.exp(-gone);
  }

  /**
   * When the moisture falls to {@code target}, s; empty if it never does: the target lies at or
   * below the equilibrium, or more than a year away.
   */
  public OptionalDouble timeTo(double target) {
    if (target >= start) {
      return OptionalDouble.of(0);
    }
    double last = lastBend();
    double moisture = moving(last);
    if (moisture <= target) {
      return OptionalDouble.of(Root.find(time -> moving(time) - target, 0, last));
    }
    double hold = temperature.at(last);
    double equilibrium = desorption.equilibrium().at(hold);
    if (target <= equilibrium) {
      return OptionalDouble.empty();
    }
    double wanted = Math.log((moisture - equilibrium) / (target - equilibrium));
    double time = last + wanted / desorption.rate(hold);
    return time <= LONGEST_S ? OptionalDouble.of(time) : OptionalDouble.empty();
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

  /**
   * ∫k dt from 0 to {@code time_s}, without unit: how many times the water above a constant
   * equilibrium is divided by e.
   */
  public double exposure(double time_s) {
    double sum = 0;
    double from = 0;
    for (double to : bendsUntil(time_s)) {
      sum += GaussLegendre.integrate(time -> desorption.rate(before(time, to)), from, to, ACCURACY);
      from = to;
    }
    return sum;
  }

  private double margin(GordonTaylor1952 glass, double time_s) {
    return glass.atMoisture(moisture(time_s)) - temperature.at(time_s);
  }

  /** Moisture while the temperature still changes. */
  private double moving(double time_s) {
    if (desorption.equilibrium() instanceof EquilibriumMoisture.Constant constant) {
      double excess = start - constant.moisture();
      return constant.moisture() + excess * Math.exp(-exposure(time_s));
    }
    double[] moisture = {start};
    double from = 0;
    for (double to : bendsUntil(time_s)) {
      var law =
          new DormandPrince5(
              (time, state, slopes) -> {
                double now = before(time, to);
                double excess = state[0] - desorption.equilibrium().at(now);
                slopes[0] = -desorption.rate(now) * excess;
              },
              ACCURACY,
              LEAST_MOISTURE);
      law.march(from, to, moisture);
      from = to;
    }
    return moisture[0];
  }

  /** The temperature on the piece that ends at {@code to}, so that a step there does not count. */
  private double before(double time_s, double to) {
    return temperature.at(Math.min(time_s, Math.nextDown(to)));
  }

  private double lastBend() {
    double[] bends = temperature.bends();
    return Math.max(0, bends[bends.length - 1]);
  }

  private double[] bendsUntil(double end_s) {
    return DoubleStream.concat(Arrays.stream(temperature.bends()), DoubleStream.of(end_s))
        .filter(time -> time > 0 && (time == end_s || time < end_s * (1 - SAME)))
        .sorted()
        .distinct()
        .toArray();
  }
}
