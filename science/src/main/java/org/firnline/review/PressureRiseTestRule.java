package org.firnline.review;

import java.util.List;
import org.firnline.logs.channel.Confidence;
import org.firnline.review.signal.Grid;

/** Short rises of the pressure that come and go at once: the valve to the collector is shut. */
final class PressureRiseTestRule implements FindingRule {
  private static final double SHORT_S = 180;
  private static final double HIGHEST_PA = 400;
  private static final int REGULAR = 3;

  @Override
  public List<Finding> find(Facts facts) {
    List<PressureRise> tests =
        facts.rises().stream().filter(rise -> isTest(facts.grid(), rise)).toList();
    if (tests.isEmpty()) {
      return List.of();
    }
    PressureRise first = tests.get(0);
    PressureRise last = tests.get(tests.size() - 1);
    double highest = tests.stream().mapToDouble(PressureRise::peak_Pa).max().orElseThrow();
    return List.of(
        new Finding(
            FindingKind.PRESSURE_RISE_TEST,
            Finding.Severity.INFORMATION,
            facts.grid().instant(first.start()),
            facts.grid().instant(last.end()),
            tests.size() >= REGULAR ? Confidence.HIGH : Confidence.LOW,
            "The log holds "
                + tests.size()
                + (tests.size() == 1 ? " short rise" : " short rises")
                + " of the pressure, up to "
                + Spoken.pressure(highest)
                + ", as a pressure-rise test makes. If you log them every second, the ice "
                + "temperature can be read from them.",
            List.of("pressure-rise test", "a valve that switches"),
            "",
            tests.stream()
                .map(
                    test ->
                        facts.evidence(
                            test.channel(),
                            test.start(),
                            test.end(),
                            "peak " + Spoken.pressure(test.peak_Pa())))
                .toList()));
  }

  static boolean isTest(Grid grid, PressureRise rise) {
    return rise.duration_s(grid) <= SHORT_S && rise.peak_Pa() < HIGHEST_PA;
  }
}
