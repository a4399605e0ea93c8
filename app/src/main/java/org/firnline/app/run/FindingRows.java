package org.firnline.app.run;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.firnline.app.run.RunView.EvidenceRow;
import org.firnline.app.run.RunView.FindingRow;
import org.firnline.app.words.LogClock;
import org.firnline.logs.Log;
import org.firnline.review.Evidence;
import org.firnline.review.Finding;

/**
 * Findings in words, numbered in the order of the review, each with the lines that show it.
 *
 * @param log what they were found in
 * @param clock how its times are shown
 */
record FindingRows(Log log, LogClock clock) {

  List<FindingRow> of(List<Finding> findings) {
    List<FindingRow> rows = new ArrayList<>();
    for (Finding finding : findings) {
      rows.add(
          new FindingRow(
              rows.size() + 1,
              state(finding.severity()),
              finding.kind().label(),
              second(finding.start()),
              second(finding.end()),
              clock.span(finding.start(), finding.end()),
              finding.text(),
              finding.causes(),
              finding.nextTime(),
              finding.evidence().stream().map(this::evidence).toList(),
              finding.confidence().label()));
    }
    return List.copyOf(rows);
  }

  private EvidenceRow evidence(Evidence seen) {
    return new EvidenceRow(
        seen.channel() + ": " + seen.seen(),
        keys(seen.channel()),
        second(seen.start()),
        second(seen.end()));
  }

  /** The lines of a channel; two names joined by a slash are those of a gauge ratio. */
  private List<String> keys(String channel) {
    List<String> exact = keys(Set.of(channel));
    return exact.isEmpty() ? keys(new HashSet<>(Arrays.asList(channel.split(" / ")))) : exact;
  }

  private List<String> keys(Set<String> names) {
    return DrawnChannel.of(log).stream()
        .filter(line -> names.contains(line.channel().name()))
        .map(DrawnChannel::key)
        .toList();
  }

  private double second(Instant at) {
    return RunPicture.seconds(log.start().orElse(Instant.EPOCH), at);
  }

  private static String state(Finding.Severity severity) {
    return switch (severity) {
      case ALARM -> "stop";
      case WATCH -> "watch";
      case INFORMATION -> "noted";
    };
  }
}
