package org.firnline.logs.form;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.text.RowStream;

/**
 * A long table, one value a line under a tag, becomes a wide one in two passes: lines are gathered
 * into a row until a tag comes again or too much time has passed. A value whose quality is not the
 * usual one is bad. A row stands in the line of its first value.
 */
public final class LongTable {
  private static final List<String> GOOD = List.of("0", "good", "ok", "g", "192", "valid", "");
  private static final int MOST_TAGS = 2_000;

  private final String timeHeading;
  private final Map<String, String> units = new LinkedHashMap<>();
  private final Map<String, Integer> qualities = new HashMap<>();
  private final TagSteps steps = new TagSteps();

  /**
   * One line of a long table.
   *
   * @param number line of the file, from 1
   * @param stamp its time as written, date and clock joined
   * @param moment its time within the day or count, in any unit; NaN if unknown
   * @param tag what it is about
   * @param value as written
   * @param unit as written, empty if none
   * @param quality as written, empty if none
   */
  public record Line(
      long number,
      String stamp,
      double moment,
      String tag,
      String value,
      String unit,
      String quality) {
    public Line {
      Objects.requireNonNull(stamp, "stamp");
      Objects.requireNonNull(tag, "tag");
      Objects.requireNonNull(value, "value");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(quality, "quality");
    }
  }

  /** An empty table. */
  public LongTable(String timeHeading) {
    this.timeHeading = timeHeading;
  }

  /** Where lines come from. */
  public interface Source extends AutoCloseable {
    /** The next line; empty at the end. */
    Optional<Line> next() throws IOException;

    @Override
    void close() throws IOException;
  }

  /** Learns tags, units and qualities from all lines. */
  public void survey(Source source) throws IOException {
    for (Optional<Line> next = source.next(); next.isPresent(); next = source.next()) {
      Line line = next.get();
      if (units.size() < MOST_TAGS || units.containsKey(line.tag())) {
        qualities.merge(folded(line.quality()), 1, Integer::sum);
        units.merge(line.tag(), line.unit(), (known, more) -> known.isEmpty() ? more : known);
        steps.take(line.tag(), line.moment());
      }
    }
  }

  /** The rows of the wide table, its heading first. */
  public RowStream.Rows rows(Source source) {
    return new Wide(source);
  }

  private boolean isGood(Line line) {
    String quality = folded(line.quality());
    boolean anyUsual = qualities.keySet().stream().anyMatch(q -> !q.isEmpty() && GOOD.contains(q));
    if (anyUsual) {
      return GOOD.contains(quality);
    }
    int most = qualities.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return qualities.getOrDefault(quality, 0) == most;
  }

  private static String folded(String quality) {
    return quality.toLowerCase(Locale.ROOT);
  }

  private final class Wide implements RowStream.Rows {
    private final Source source;
    private final List<String> tags = List.copyOf(units.keySet());
    private final double apart = steps.halfAStep();
    private final Map<String, String> row = new HashMap<>();
    private final Deque<Line> due = new ArrayDeque<>();
    private boolean started;
    private boolean headed;
    private long written;

    Wide(Source source) {
      this.source = source;
    }

    @Override
    public Optional<List<String>> next() throws IOException {
      if (!started) {
        started = true;
        source.next().ifPresent(due::add);
      }
      // The heading stands right above the first row, and every row in its first value's line.
      long wanted = due.isEmpty() ? 0 : due.getFirst().number() - (headed ? 0 : 1);
      if (headed && due.isEmpty()) {
        return Optional.empty();
      }
      written++;
      if (written < wanted) {
        return Optional.of(List.of());
      }
      if (!headed) {
        headed = true;
        return Optional.of(heading());
      }
      return Optional.of(gathered());
    }

    private List<String> heading() {
      List<String> header = new ArrayList<>(List.of(timeHeading));
      tags.forEach(
          tag ->
              header.add(
                  units.getOrDefault(tag, "").isEmpty() ? tag : tag + " [" + units.get(tag) + "]"));
      return header;
    }

    private List<String> gathered() throws IOException {
      Line first = due.getFirst();
      row.clear();
      while (!due.isEmpty() && belongs(first, due.getFirst())) {
        Line line = due.removeFirst();
        row.put(line.tag(), isGood(line) ? line.value() : "bad");
        source.next().ifPresent(due::add);
      }
      List<String> cells = new ArrayList<>(List.of(first.stamp()));
      tags.forEach(tag -> cells.add(row.getOrDefault(tag, "")));
      return cells;
    }

    private boolean belongs(Line first, Line line) {
      double passed = Math.abs(line.moment() - first.moment());
      return !row.containsKey(line.tag())
          && (line.stamp().equals(first.stamp()) || Double.isNaN(passed) || passed < apart);
    }

    @Override
    public void close() throws IOException {
      source.close();
    }
  }
}
