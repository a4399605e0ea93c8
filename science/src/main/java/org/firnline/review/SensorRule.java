package org.firnline.review;

import java.util.List;
import org.firnline.logs.channel.Confidence;

/** A thermometer failed during the run. */
final class SensorRule implements FindingRule {
  @Override
  public List<Finding> find(Facts facts) {
    return facts.faults().stream().map(fault -> finding(facts, fault)).toList();
  }

  private static Finding finding(Facts facts, SensorFault fault) {
    Stretch stretch = fault.stretch();
    String name = fault.trace().name();
    return new Finding(
        FindingKind.SENSOR_DEAD,
        Finding.Severity.WATCH,
        facts.grid().instant(stretch.start()),
        facts.grid().instant(stretch.end()),
        Confidence.HIGH,
        "The sensor "
            + name
            + " fails "
            + Spoken.into(facts.grid().second(stretch.start()))
            + " ("
            + fault.seen()
            + ") for "
            + Spoken.duration(stretch.duration_s(facts.grid()))
            + ". Its values in that time are left out: do not judge its vessel by them.",
        List.of("broken wire or plug", "the sensor slipped out of its vessel", "logger input"),
        "Replace or re-seat " + name + " before the next run.",
        List.of(facts.evidence(name, stretch.start(), stretch.end(), fault.seen())));
  }
}
