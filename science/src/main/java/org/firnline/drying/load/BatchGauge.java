package org.firnline.drying.load;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.firnline.matter.Water;

/**
 * What a thermal-conductivity gauge reads over a capacitance gauge while a load runs dry at
 * constant pressure: 1 + g x_w, with x_w = n_w/(n_w + n_g).
 *
 * <p>n_w is the vapor of the load; n_g the leak and bleed gas that keeps the pressure while the
 * pump takes its volume of it, n_g = P S/(R T). The collector takes all vapor, so that the pump
 * sees none of it.
 *
 * <p>Source: mass balance of the chamber, derivation in docs/science.md. g is a property of the
 * gauge, published as 0.5 to 1.0.
 *
 * @param excess g: reading in pure vapor over the true pressure, minus 1; positive
 * @param pumpingSpeed S at the pump, m3/s; positive
 * @param gasTemperature T of the gas at the pump, K; positive
 */
public record BatchGauge(double excess, double pumpingSpeed, double gasTemperature) {

  public BatchGauge {
    if (!(excess > 0) || !(pumpingSpeed > 0) || !(gasTemperature > 0)) {
      throw new IllegalArgumentException(
          "gauge excess, pumping speed and gas temperature must be positive");
    }
  }

  /**
   * Last times at which a share of the plateau above 1 was left.
   *
   * @param onset with 90 % left, s
   * @param midpoint with 50 % left, s
   * @param end with 10 % left, s
   */
  public record Marks(double onset, double midpoint, double end) {}

  /**
   * The ratio at one moment.
   *
   * @param time since primary drying began, s
   * @param value reading over true pressure, 1 or more
   */
  public record Ratio(double time, double value) {}

  /** The ratio while the load gives off {@code rate} kg/s at {@code pressure_Pa}. */
  public double ratio(double rate, double pressure_Pa) {
    double vapor = rate / Water.MOLAR_MASS;
    double gas = pressure_Pa * pumpingSpeed / (Water.GAS_CONSTANT * gasTemperature);
    return 1 + excess * vapor / (vapor + gas);
  }

  /** The ratio along a run, then 1 after its last moment if all ice is gone by then. */
  public List<Ratio> along(LoadRun run) {
    List<Ratio> curve = new ArrayList<>();
    for (LoadState state : run.course()) {
      curve.add(new Ratio(state.time(), ratio(state.totalRate(), state.pressure())));
    }
    if (run.outcome() instanceof LoadOutcome.Dries dries) {
      curve.add(new Ratio(dries.time(), 1));
    }
    return List.copyOf(curve);
  }

  /** Onset, midpoint and end on a curve; empty where the ratio does not come down that far. */
  public static Optional<Marks> marks(List<Ratio> curve) {
    double plateau = curve.stream().mapToDouble(Ratio::value).max().orElse(1);
    double onset = lastAbove(curve, 1 + 0.9 * (plateau - 1));
    double midpoint = lastAbove(curve, 1 + 0.5 * (plateau - 1));
    double end = lastAbove(curve, 1 + 0.1 * (plateau - 1));
    boolean reached = Double.isFinite(onset + midpoint + end);
    return reached ? Optional.of(new Marks(onset, midpoint, end)) : Optional.empty();
  }

  /** Last time the curve is at or above {@code level}, between two moments by a straight line. */
  private static double lastAbove(List<Ratio> curve, double level) {
    List<Ratio> backward = new ArrayList<>(curve);
    Collections.reverse(backward);
    for (int at = 0; at < backward.size(); at++) {
      Ratio here = backward.get(at);
      if (here.value() >= level) {
        if (at == 0) {
          return Double.NaN;
        }
        Ratio after = backward.get(at - 1);
        double share = (here.value() - level) / (here.value() - after.value());
        return here.time() + share * (after.time() - here.time());
      }
    }
    return Double.NaN;
  }
}
