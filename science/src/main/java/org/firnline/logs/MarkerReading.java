package org.firnline.logs;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.TimeAxis;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.TableFinder;
import org.firnline.logs.stamp.ClockChange;
import org.firnline.logs.table.LineMark;
import org.firnline.logs.table.LineNumbers;

/** Makes markers of lines in words, of text and step channels, and of clock changes. */
final class MarkerReading {
  private static final int MOST_PER_CHANNEL = 5_000;
  private static final double ALWAYS = 0.95;

  private final TimeAxis time;
  private final LineNumbers lines;
  private final List<Marker> markers = new ArrayList<>();

  MarkerReading(TimeAxis time, LineNumbers lines) {
    this.time = time;
    this.lines = lines;
  }

  /** Adds remarks that stand before the table: they hold when it starts. */
  void addRemarks(List<SampleLine> preamble) {
    for (SampleLine line : preamble) {
      if (TableFinder.isRemark(line) && time.size() > 0) {
        String text = line.text().strip().replaceFirst("^(#|//)+\\s*", "");
        LineMark.Kind kind = LineMark.kindOf(text);
        markers.add(
            new Marker(time.instant(0), line.number(), Marker.Kind.valueOf(kind.name()), text));
      }
    }
  }

  /** Adds lines in words. */
  void addMarks(List<LineMark> marks) {
    for (LineMark mark : marks) {
      if (mark.kind() != LineMark.Kind.STATISTICS && time.size() > 0) {
        int row = Math.min(mark.row(), time.size() - 1);
        markers.add(
            new Marker(
                time.instant(row),
                mark.line(),
                Marker.Kind.valueOf(mark.kind().name()),
                mark.text()));
      }
    }
  }

  /** Adds the places where the logger's clock was set. */
  void addClockChanges(List<ClockChange> changes) {
    for (ClockChange change : changes) {
      String direction = change.step_ms() < 0 ? "back" : "forward";
      markers.add(
          new Marker(
              time.instant(change.row()),
              lines.lineOf(change.row()),
              Marker.Kind.CLOCK_CHANGE,
              "clock set " + direction + " by " + spoken(Math.abs(change.step_ms()))));
    }
  }

  private static String spoken(long millis) {
    Duration step = Duration.ofMillis(millis);
    String text = "";
    if (step.toHours() > 0) {
      text += step.toHours() + " h ";
    }
    if (step.toMinutesPart() > 0) {
      text += step.toMinutesPart() + " min ";
    }
    if (step.toSecondsPart() > 0 || text.isEmpty()) {
      text += step.toSecondsPart() + " s";
    }
    return text.strip();
  }

  /** Adds what text and step channels say. */
  void addChannels(List<Channel> channels) {
    for (Channel channel : channels) {
      if (channel.role() == Role.IGNORED) {
        continue;
      }
      if (!channel.labels().isEmpty()) {
        addTexts(channel);
      } else if (channel.role() == Role.STEP_NUMBER) {
        addSteps(channel);
      }
    }
  }

  /** A column that always says something tells states; one that rarely does tells events. */
  private void addTexts(Channel channel) {
    int spoken = channel.series().goodCount();
    boolean isState = spoken > ALWAYS * time.size();
    if (isState && channel.labels().size() == 1 && !markers.isEmpty()) {
      return;
    }
    double last = Double.NaN;
    int added = 0;
    for (int i = 0; i < time.size() && added < MOST_PER_CHANNEL; i++) {
      boolean good = channel.series().quality(i) == Quality.GOOD;
      double code = good ? channel.series().value(i) : -1;
      if (code != last && good) {
        Marker.Kind kind = isState ? Marker.Kind.STATE : Marker.Kind.EVENT;
        markers.add(
            new Marker(time.instant(i), lines.lineOf(i), kind, channel.labels().get((int) code)));
        added++;
      }
      last = code;
    }
  }

  private void addSteps(Channel channel) {
    double last = Double.NaN;
    int added = 0;
    for (int i = 0; i < time.size() && added < MOST_PER_CHANNEL; i++) {
      double step = channel.series().value(i);
      if (!Double.isNaN(step) && step != last) {
        String text = String.format(Locale.ROOT, "%s %.0f", channel.name(), step);
        markers.add(new Marker(time.instant(i), lines.lineOf(i), Marker.Kind.STEP, text));
        last = step;
        added++;
      }
    }
  }

  /** All markers in time order. */
  List<Marker> markers() {
    markers.sort(Comparator.comparing(Marker::at).thenComparingLong(Marker::line));
    return markers;
  }
}
