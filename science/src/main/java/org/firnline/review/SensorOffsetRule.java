package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/**
 * A product thermometer that stands off the shelf when both must agree: at the end of freezing, and
 * when all is dry. Off by the same at both ends it has an offset; off by more at one end it drifts.
 */
final class SensorOffsetRule implements FindingRule {
  private static final double OFFSET_K = 1;
  private static final double DRIFT_K = 1.5;
  private static final double LEVEL_S = 1800;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    Optional<Trace> shelf = facts.run().first(Role.SHELF);
    if (shelf.isEmpty()) {
      return findings;
    }
    for (Trace trace : facts.run().all(Role.PRODUCT)) {
      boolean faulty = facts.faults().stream().anyMatch(f -> f.trace().name().equals(trace.name()));
      if (!faulty) {
        look(facts, shelf.get(), trace, findings);
      }
    }
    return findings;
  }

  private static void look(Facts facts, Trace shelf, Trace trace, List<Finding> findings) {
    int level = facts.grid().steps(LEVEL_S);
    int pump = facts.timeline().pump();
    int vented = facts.timeline().vented();
    boolean dried = facts.timeline().secondary() < vented - level;
    double frozen = held(shelf, trace, pump - level, pump);
    double dry = dried ? held(shelf, trace, vented - level, vented) : Double.NaN;
    double drift = dry - frozen;
    if (Math.abs(drift) > DRIFT_K) {
      findings.add(
          finding(
              facts,
              trace,
              FindingKind.SENSOR_DRIFT,
              pump,
              vented,
              trace.name()
                  + " drifts by "
                  + Spoken.kelvin(drift)
                  + " against the shelf between the end of freezing and the end of drying. Treat "
                  + "its temperatures, and margins taken from them, with that doubt."));
    } else if (Math.abs(frozen) > OFFSET_K && Math.abs(dry) > OFFSET_K) {
      findings.add(
          finding(
              facts,
              trace,
              FindingKind.SENSOR_OFFSET,
              pump,
              vented,
              trace.name()
                  + " stands "
                  + Spoken.kelvin((frozen + dry) / 2)
                  + " off the shelf whenever both should agree. Correct it before you compare it "
                  + "with the critical temperature."));
    }
  }

  /** Median difference to the shelf over a stretch in which the shelf holds; NaN if it does not. */
  private static double held(Trace shelf, Trace trace, int from, int to) {
    Signal difference = trace.signal().with(shelf.signal(), (product, plate) -> product - plate);
    double spread =
        shelf.signal().quantileIn(from, to, 0.9) - shelf.signal().quantileIn(from, to, 0.1);
    return from >= 0 && spread < 1 ? difference.medianIn(from, to) : Double.NaN;
  }

  private static Finding finding(
      Facts facts, Trace trace, FindingKind kind, int from, int to, String text) {
    return new Finding(
        kind,
        Finding.Severity.WATCH,
        facts.grid().instant(from),
        facts.grid().instant(to),
        Confidence.MEDIUM,
        text,
        List.of("sensor or input out of calibration", "the sensor does not touch the product"),
        "Check " + trace.name() + " in an ice bath.",
        List.of(facts.evidence(trace.name(), from, to, "difference to the shelf")));
  }
}
