package org.firnline.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/** Probed vessels dry before the rest: a thermometer seeds the ice and brings heat in. */
final class ProbedFirstRule implements FindingRule {
  private static final double CLEARLY_S = 1800;

  @Override
  public List<Finding> find(Facts facts) {
    Optional<Endpoint> load =
        facts.loadEnd().filter(end -> end.method() != Endpoint.Method.PRESSURE_FALL);
    Optional<Integer> probed =
        facts.ends().stream()
            .filter(end -> end.trace().channel().role() == Role.PRODUCT)
            .flatMap(end -> end.point().stream())
            .max(Comparator.naturalOrder());
    if (load.isEmpty() || probed.isEmpty()) {
      return List.of();
    }
    int loadPoint = facts.grid().pointAt(load.get().at().orElseThrow());
    double later_s = (loadPoint - probed.get()) * facts.grid().step_s();
    if (later_s < CLEARLY_S) {
      return List.of();
    }
    List<Evidence> evidence = new ArrayList<>();
    evidence.add(
        facts.evidence(load.get().channel(), probed.get(), loadPoint, "vapor still comes"));
    for (ThermometerEnds.End end : facts.ends()) {
      end.point()
          .ifPresent(
              point -> evidence.add(facts.evidence(end.trace().name(), point, point, "ice gone")));
    }
    return List.of(
        new Finding(
            FindingKind.PROBED_VESSELS_DRY_FIRST,
            Finding.Severity.INFORMATION,
            facts.grid().instant(probed.get()),
            facts.grid().instant(loadPoint),
            Confidence.HIGH,
            "The probed vessels dry before the rest: the last of them runs out of ice "
                + Spoken.into(facts.grid().second(probed.get()))
                + ", the load "
                + Spoken.duration(later_s)
                + " later. Do not raise the heat on the thermometers alone.",
            List.of("a thermometer makes its vessel freeze earlier and dry faster"),
            "Add a soak of at least "
                + Spoken.duration(later_s)
                + " after the last thermometer meets the shelf.",
            evidence));
  }
}
