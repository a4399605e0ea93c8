package org.firnline.review;

import java.time.Duration;
import java.util.List;
import java.util.Set;

/** Leaves out findings that only repeat what a power cut explains. */
final class OneProblem {
  private static final Duration AROUND = Duration.ofMinutes(20);
  private static final Set<FindingKind> EXPLAINED =
      Set.of(
          FindingKind.VACUUM_LOST,
          FindingKind.VACUUM_LEAK,
          FindingKind.RATIO_FALL_IS_NOT_THE_END,
          FindingKind.PRESSURE_FLOATS,
          FindingKind.COLLECTOR_WARMING,
          FindingKind.PORT_OPENED,
          FindingKind.SHELF_OVERSHOOT);

  private OneProblem() {}

  static List<Finding> of(List<Finding> findings) {
    List<Finding> cuts =
        findings.stream().filter(finding -> finding.kind() == FindingKind.POWER_CUT).toList();
    return findings.stream()
        .filter(finding -> cuts.stream().noneMatch(cut -> explains(cut, finding)))
        .toList();
  }

  private static boolean explains(Finding cut, Finding other) {
    return EXPLAINED.contains(other.kind())
        && !other.start().isBefore(cut.start().minus(AROUND))
        && !other.start().isAfter(cut.end().plus(AROUND));
  }
}
