package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.logs.Log;
import org.firnline.logs.Marker;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/**
 * Rows are missing. If pressure or collector stand elsewhere behind the gap the machine stopped
 * too: a power cut; if they stand where they stood only the logger did.
 */
final class GapRule implements FindingRule {
  private static final double PRESSURE_MOVED = 2;
  private static final double COLLECTOR_MOVED_K = 5;
  private static final int MOST = 20;

  @Override
  public List<Finding> find(Facts facts) {
    List<Finding> findings = new ArrayList<>();
    List<Gap> gaps = Gap.of(facts.run().log().time());
    for (Gap gap : gaps.subList(0, Math.min(MOST, gaps.size()))) {
      List<Evidence> moved = moved(facts, gap);
      boolean underVacuum =
          facts.vacuum().isPresent()
              && facts.grid().pointAt(facts.run().log().time().elapsed_s(gap.before()))
                  < facts.timeline().vented();
      boolean cut = underVacuum && !moved.isEmpty();
      findings.add(cut ? powerCut(facts, gap, moved) : loggerOnly(facts, gap));
    }
    return findings;
  }

  private static List<Evidence> moved(Facts facts, Gap gap) {
    List<Evidence> moved = new ArrayList<>();
    for (Trace trace : facts.run().all()) {
      Channel channel = trace.channel();
      double before = lastGood(channel, gap.before());
      double after = firstGood(channel, gap.after());
      double ratio = after / before;
      boolean pressure =
          channel.role().isChamberPressure()
              && (ratio > PRESSURE_MOVED || ratio < 1 / PRESSURE_MOVED);
      boolean collector = channel.role() == Role.COLLECTOR && after - before > COLLECTOR_MOVED_K;
      if (pressure) {
        moved.add(evidence(facts, channel, gap, Spoken.pressure(before), Spoken.pressure(after)));
      } else if (collector) {
        moved.add(
            evidence(facts, channel, gap, Spoken.temperature(before), Spoken.temperature(after)));
      }
    }
    return moved;
  }

  private static double lastGood(Channel channel, int row) {
    int i = row;
    while (i > 0 && row - i < 10 && Double.isNaN(channel.series().value(i))) {
      i--;
    }
    return channel.series().value(i);
  }

  private static double firstGood(Channel channel, int row) {
    int i = row;
    while (i + 1 < channel.series().size()
        && i - row < 10
        && Double.isNaN(channel.series().value(i))) {
      i++;
    }
    return channel.series().value(i);
  }

  private static Evidence evidence(
      Facts facts, Channel channel, Gap gap, String before, String after) {
    Log log = facts.run().log();
    return new Evidence(
        channel.name(),
        log.time().instant(gap.before()),
        log.time().instant(gap.after()),
        before + " before, " + after + " behind the gap");
  }

  private static Finding powerCut(Facts facts, Gap gap, List<Evidence> moved) {
    Log log = facts.run().log();
    String vessels = verdicts(facts, gap);
    return new Finding(
        FindingKind.POWER_CUT,
        Finding.Severity.ALARM,
        log.time().instant(gap.before()),
        log.time().instant(gap.after()),
        restarted(log, gap) ? Confidence.HIGH : Confidence.MEDIUM,
        "The dryer stops for "
            + Spoken.duration(gap.length_s())
            + ", "
            + Spoken.into(log.time().elapsed_s(gap.before()))
            + ": no rows, and "
            + moved.get(0).channel()
            + " shows "
            + moved.get(0).seen()
            + ". "
            + vessels
            + "Look at the cakes before you rely on them.",
        List.of("power cut", "dryer switched off or tripped", "pump or compressor stopped"),
        "Write down who found it and when; add a power-failure alert.",
        moved);
  }

  private static boolean restarted(Log log, Gap gap) {
    return log.markers().stream()
        .anyMatch(
            marker ->
                marker.kind() == Marker.Kind.RESTART
                    && !marker.at().isBefore(log.time().instant(gap.before()))
                    && !marker.at().isAfter(log.time().instant(gap.after())));
  }

  /** What is known per vessel: the warmest that was seen, not the warmest that was. */
  private static String verdicts(Facts facts, Gap gap) {
    StringBuilder text = new StringBuilder();
    for (Trace trace : facts.run().vesselThermometers()) {
      double after = firstGood(trace.channel(), gap.after());
      if (Double.isNaN(after)) {
        continue;
      }
      text.append(WarmUpWords.vessel(trace.name(), after, facts.limit().limit_K())).append(' ');
    }
    text.append(ReviewWords.say("warm.unprobed")).append(' ');
    return text.toString();
  }

  private static Finding loggerOnly(Facts facts, Gap gap) {
    Log log = facts.run().log();
    String channel = facts.run().all().isEmpty() ? "" : facts.run().all().get(0).name();
    return new Finding(
        FindingKind.GAP,
        Finding.Severity.WATCH,
        log.time().instant(gap.before()),
        log.time().instant(gap.after()),
        Confidence.HIGH,
        "The log has no rows for "
            + Spoken.duration(gap.length_s())
            + ", "
            + Spoken.into(log.time().elapsed_s(gap.before()))
            + ". What happened in between is not known and is not filled in.",
        List.of("the logger or its connection stopped"),
        "",
        List.of(
            new Evidence(
                channel,
                log.time().instant(gap.before()),
                log.time().instant(gap.after()),
                "no rows")));
  }
}
