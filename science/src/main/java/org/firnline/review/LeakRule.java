package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;
import org.firnline.review.signal.Signal;

/**
 * Air leaks in: true pressure rises while the ratio of the gauges falls, because the gas that comes
 * in is not water vapor. If pressure rises and the ratio holds, it is vapor the dryer cannot carry.
 */
final class LeakRule implements FindingRule {
  private static final double LONG_S = 180;
  private static final double SETTLE_S = 600;

  /** Before the heat, gas and not vapor: less than this share of the plateau. */
  private static final double GAS = 0.3;

  private static final double FALLS = 0.03;

  /** The ninth tenth of a pressure that is held is less than this many times its first. */
  private static final double HELD = 1.05;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    Optional<GaugeRatio.Ratio> ratio = facts.ratio().filter(GaugeRatio.Ratio::hasPlateau);
    if (ratio.isEmpty()) {
      return findings;
    }
    for (PressureRise rise : facts.rises()) {
      if (isLeak(facts, rise)) {
        findings.add(leak(facts, rise));
        if (RatioFall.during(facts, ratio.get(), rise) > FALLS
            && !startsWithGas(facts, ratio.get(), rise)) {
          findings.add(
              notTheEnd(facts, ratio.get(), rise, RatioFall.during(facts, ratio.get(), rise)));
        }
      }
    }
    return findings;
  }

  /** Whether the gauges show that what raises the pressure is not vapor. */
  static boolean isLeak(Facts facts, PressureRise rise) {
    boolean slow = rise.duration_s(facts.grid()) >= LONG_S;
    boolean vacuum = rise.peak_Pa() < PressureRise.TRIPLE_POINT_PA;
    boolean collector =
        CollectorRule.stretches(facts, rise.start(), rise.end()).stream()
            .anyMatch(warm -> warm.start() <= rise.start());
    return slow
        && !collector
        && vacuum
        && facts
            .ratio()
            .filter(GaugeRatio.Ratio::hasPlateau)
            .filter(
                ratio ->
                    RatioFall.during(facts, ratio, rise) > FALLS
                        || startsWithGas(facts, ratio, rise))
            .isPresent();
  }

  /** From the evacuation on, and before any heat drives vapor out, more than the set point. */
  private static boolean startsWithGas(Facts facts, GaugeRatio.Ratio ratio, PressureRise rise) {
    int cold = facts.timeline().working() + facts.grid().steps(SETTLE_S);
    boolean first = rise.start() <= ratio.from() + 3;
    int heat =
        facts.ramps().stream()
            .filter(ramp -> ramp.isUp() && ramp.start() > cold)
            .mapToInt(Ramp::start)
            .findFirst()
            .orElse(cold);
    double share = (ratio.raw().medianIn(cold, heat) - 1) / (ratio.plateau() - 1);
    return first && heat - cold > 3 && share < GAS && !isHeldElsewhere(facts, rise);
  }

  /** A dryer that logs no set point and holds its pressure may hold another one than planned. */
  private static boolean isHeldElsewhere(Facts facts, PressureRise rise) {
    return facts.run().first(Role.PRESSURE_SET_POINT).isEmpty()
        && facts
            .run()
            .truestGauge()
            .map(Trace::signal)
            .filter(pressure -> isHeld(pressure, rise))
            .isPresent();
  }

  private static boolean isHeld(Signal pressure, PressureRise rise) {
    int to = rise.end() + 1;
    return pressure.quantileIn(rise.start(), to, 0.9)
        < HELD * pressure.quantileIn(rise.start(), to, 0.1);
  }

  private static Finding leak(Facts facts, PressureRise rise) {
    return new Finding(
        FindingKind.VACUUM_LEAK,
        Finding.Severity.ALARM,
        facts.grid().instant(rise.start()),
        facts.grid().instant(rise.end()),
        Confidence.HIGH,
        "Air leaks into the chamber for "
            + Spoken.duration(rise.duration_s(facts.grid()))
            + ": the pressure goes from "
            + Spoken.pressure(rise.base_Pa())
            + " to "
            + Spoken.pressure(rise.peak_Pa())
            + " while the vapor share falls. The product runs warmer meanwhile; compare its "
            + "temperatures with the limit, and find the leak before the next run.",
        List.of(
            "door seal, drain or vent valve not tight",
            "pump stopped or its valve shut",
            "bleed valve stuck open",
            "a pressure set point raised by hand"),
        "Do a leak test with the dryer clean, dry and empty before you load it again.",
        List.of(
            facts.evidence(
                rise.channel(),
                rise.start(),
                rise.end(),
                "rises to " + Spoken.pressure(rise.peak_Pa()))));
  }

  private static Finding notTheEnd(
      Facts facts, GaugeRatio.Ratio ratio, PressureRise rise, double fall) {
    return new Finding(
        FindingKind.RATIO_FALL_IS_NOT_THE_END,
        Finding.Severity.WATCH,
        facts.grid().instant(rise.start()),
        facts.grid().instant(rise.end()),
        Confidence.HIGH,
        "The gauge ratio falls by "
            + Math.round(100 * fall)
            + " % of its plateau while air leaks in: do not take this as the end of drying. "
            + "Wait until the ratio falls with the pressure on its level.",
        List.of("the leaking air thins the vapor"),
        "",
        List.of(
            facts.evidence(
                ratio.channels(), rise.start(), rise.end(), "ratio falls, then comes back")));
  }
}
