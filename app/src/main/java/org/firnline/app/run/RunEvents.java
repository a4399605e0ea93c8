package org.firnline.app.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.firnline.app.run.RunView.EventRow;
import org.firnline.app.store.KeptNote;
import org.firnline.app.words.LogClock;
import org.firnline.logs.Log;
import org.firnline.logs.Marker;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/**
 * What the log says in words and what people noted, in order of time, lettered as on the picture.
 */
@Component
class RunEvents {
  /** More would be no list that anyone reads; the rest stays in the file. */
  private static final int MOST = 400;

  private static final int LETTERS = 26;
  private static final String NOTE = "note";

  private final MessageSource words;

  RunEvents(MessageSource words) {
    this.words = words;
  }

  /** An event before it has its letter. */
  private record Told(double t_s, String kind, String name, String text) {}

  /** All events within the log's time. */
  List<EventRow> of(Log log, List<KeptNote> notes, LogClock clock, Locale locale) {
    Instant start = log.start().orElse(Instant.EPOCH);
    Stream<Told> marked = log.markers().stream().map(marker -> told(marker, start));
    String name = words.getMessage("run.event.note", null, locale);
    Stream<Told> noted =
        notes.stream()
            .filter(note -> note.withdrawn().isEmpty())
            .map(note -> new Told(note.second(start), NOTE, name, note.text()));
    double end_s = log.time().duration_s();
    List<Told> inOrder =
        Stream.concat(marked, noted)
            .filter(event -> event.t_s() >= 0 && event.t_s() <= end_s)
            .sorted(Comparator.comparingDouble(Told::t_s))
            .limit(MOST)
            .toList();
    List<EventRow> rows = new ArrayList<>();
    for (Told event : inOrder) {
      Instant at = start.plusMillis(Math.round(event.t_s() * 1_000));
      rows.add(
          new EventRow(
              letters(rows.size()),
              event.t_s(),
              event.kind(),
              event.name(),
              event.text(),
              clock.moment(at)));
    }
    return List.copyOf(rows);
  }

  private static Told told(Marker marker, Instant start) {
    double t_s = Duration.between(start, marker.at()).toMillis() / 1_000.0;
    String kind = marker.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return new Told(t_s, kind, marker.kind().label(), marker.text());
  }

  /** a, b, … z, aa, ab, …. */
  private static String letters(int number) {
    String last = String.valueOf((char) ('a' + number % LETTERS));
    return number < LETTERS ? last : letters(number / LETTERS - 1) + last;
  }
}
