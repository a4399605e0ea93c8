package org.firnline.review;

import java.util.List;
import org.firnline.logs.Marker;
import org.firnline.logs.channel.Confidence;

/** The logger's clock was set during the run. */
final class ClockRule implements FindingRule {
  @Override
  public List<Finding> find(Facts facts) {
    return facts.run().log().markers().stream()
        .filter(marker -> marker.kind() == Marker.Kind.CLOCK_CHANGE)
        .map(ClockRule::finding)
        .toList();
  }

  private static Finding finding(Marker marker) {
    return new Finding(
        FindingKind.CLOCK_CHANGED,
        Finding.Severity.INFORMATION,
        marker.at(),
        marker.at(),
        Confidence.MEDIUM,
        "The logger's "
            + marker.text()
            + " (line "
            + marker.line()
            + "). Durations are taken on in file order; clock times after this line differ from "
            + "those the logger wrote.",
        List.of("someone set the clock", "summer time ended", "the logger took the network's time"),
        "Keep the logger on one clock.",
        List.of(new Evidence("time", marker.at(), marker.at(), "line " + marker.line())));
  }
}
