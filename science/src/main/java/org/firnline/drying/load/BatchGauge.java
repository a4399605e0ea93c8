package org.firnline.drying.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.gauge.RatioCurve;
import org.firnline.drying.gauge.RatioPoint;
import org.firnline.drying.gauge.VaporShare;

/**
 * What a thermal-conductivity gauge reads over a capacitance gauge while a load runs dry at
 * constant pressure: 1 + g x_w, with x_w = n_w/(n_w + n_g).
 *
 * <p>The share is that of {@link VaporShare}, the marks on the curve those of {@link RatioCurve}.
 * n_w is the vapor of the load; n_g the leak and bleed gas that keeps the pressure while the pump
 * takes its volume of it, n_g = P S/(R T). The collector takes all vapor, so that the pump sees
 * none of it.
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

  /** The ratio while the load gives off {@code rate} kg/s at {@code pressure_Pa}. */
  public double ratio(double rate, double pressure_Pa) {
    return 1 + excess * VaporShare.withPump(rate, pressure_Pa, pumpingSpeed, gasTemperature);
  }

  /**
   * The ratio along a run, then 1 after its last moment if all ice is gone by then; empty where the
   * run never started.
   */
  public Optional<RatioCurve> along(LoadRun run) {
    List<RatioPoint> curve = new ArrayList<>();
    for (LoadState state : run.course()) {
      curve.add(new RatioPoint(state.time(), ratio(state.totalRate(), state.pressure())));
    }
    if (run.outcome() instanceof LoadOutcome.Dries dries) {
      curve.add(new RatioPoint(dries.time(), 1));
    }
    return curve.size() < 2 ? Optional.empty() : Optional.of(new RatioCurve(curve));
  }
}
