package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.logs.channel.Confidence;

/** A sudden rise of the pressure that is pumped away again: a port, a valve, the door. */
final class OpenedRule implements FindingRule {
  private static final double SUDDEN_S = 300;
  private static final double MUCH = 10;
  private static final double AT_LEAST_PA = 50;
  private static final double PUMPED_AWAY_S = 3600;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    for (PressureRise rise : facts.rises()) {
      if (isOpening(facts, rise)) {
        findings.add(finding(facts, rise));
      }
    }
    return findings;
  }

  /** Whether a rise comes at once, is large, and is pumped away again. */
  static boolean isOpening(Facts facts, PressureRise rise) {
    boolean sudden = (rise.peak() - rise.start()) * facts.grid().step_s() <= SUDDEN_S;
    boolean much = rise.peak_Pa() > MUCH * rise.base_Pa() && rise.peak_Pa() > AT_LEAST_PA;
    boolean away = rise.duration_s(facts.grid()) < PUMPED_AWAY_S;
    return sudden && much && away && !PressureRiseTestRule.isTest(facts.grid(), rise);
  }

  private static Finding finding(Facts facts, PressureRise rise) {
    double at_s = facts.grid().second(rise.start());
    String what = facts.run().hasShelf() ? "Air gets into the chamber " : "A port is opened ";
    return new Finding(
        FindingKind.PORT_OPENED,
        Finding.Severity.WATCH,
        facts.grid().instant(rise.start()),
        facts.grid().instant(rise.end()),
        facts.run().hasShelf() ? Confidence.MEDIUM : Confidence.HIGH,
        what
            + Spoken.into(at_s)
            + ": the pressure jumps from "
            + Spoken.pressure(rise.base_Pa())
            + " to "
            + Spoken.pressure(rise.peak_Pa())
            + " and takes "
            + Spoken.duration(rise.duration_s(facts.grid()))
            + " to recover. Vessels already drying warm up meanwhile: look at them, and note who "
            + "opened what.",
        List.of("a flask is added or taken off", "a valve is opened", "a hose or seal slips"),
        "Close the other valves first, open slowly, and reopen when the pressure has recovered.",
        List.of(
            facts.evidence(
                rise.channel(),
                rise.start(),
                rise.end(),
                "jumps to " + Spoken.pressure(rise.peak_Pa()))));
  }
}
