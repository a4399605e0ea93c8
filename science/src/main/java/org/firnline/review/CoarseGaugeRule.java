package org.firnline.review;

import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/** The only gauge steps by more than the pressures that matter: no end of drying can be read. */
final class CoarseGaugeRule implements FindingRule {
  private static final double TOO_COARSE_PA = 50;

  @Override
  public List<Finding> find(Facts facts) {
    Optional<Trace> gauge = facts.run().truestGauge();
    boolean better = facts.run().first(Role.PRESSURE_CAPACITANCE).isPresent();
    if (gauge.isEmpty() || better) {
      return List.of();
    }
    double step = smallestStep(gauge.get().signal());
    if (!(step > TOO_COARSE_PA) || Double.isInfinite(step)) {
      return List.of();
    }
    int to = facts.run().size() - 1;
    String name = gauge.get().name();
    return List.of(
        new Finding(
            FindingKind.GAUGE_TOO_COARSE,
            Finding.Severity.INFORMATION,
            facts.grid().instant(0),
            facts.grid().instant(to),
            Confidence.HIGH,
            "The gauge "
                + name
                + " steps by "
                + Spoken.pressure(step)
                + ": too coarse to tell how dry the load is. Rely on thermometers and weighing.",
            List.of("a gauge made for coarse vacuum"),
            "Add a gauge that resolves 0.01 mbar.",
            List.of(facts.evidence(name, 0, to, "steps of " + Spoken.pressure(step)))));
  }

  private static double smallestStep(Signal pressure) {
    double smallest = Double.POSITIVE_INFINITY;
    for (int i = 1; i < pressure.size(); i++) {
      double step = Math.abs(pressure.at(i) - pressure.at(i - 1));
      smallest = step > 1e-9 ? Math.min(smallest, step) : smallest;
    }
    return smallest;
  }
}
