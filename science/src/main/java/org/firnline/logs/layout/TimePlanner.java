package org.firnline.logs.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the time columns of a table by what they hold, then by what they are called. */
public final class TimePlanner {
  private final Vocabulary vocabulary;
  private final UnitSpellings units;

  /** A planner with its words and units. */
  public TimePlanner(Vocabulary vocabulary, UnitSpellings units) {
    this.vocabulary = vocabulary;
    this.units = units;
  }

  /** The time columns of a table. */
  public TimePlan plan(TableShape shape, List<ColumnHeading> headings) {
    List<ColumnKind> kinds = shape.kinds();
    int stamp = kinds.indexOf(ColumnKind.DATE_TIME);
    if (stamp >= 0) {
      return plan(TimePlan.Form.STAMP, headings, stamp);
    }
    int date = kinds.indexOf(ColumnKind.DATE);
    int clock = kinds.indexOf(ColumnKind.TIME);
    if (date >= 0 && clock >= 0) {
      return new TimePlan(
          TimePlan.Form.DATE_AND_CLOCK, List.of(date, clock), Optional.empty(), false);
    }
    if (clock >= 0) {
      return plan(TimePlan.Form.CLOCK, headings, clock);
    }
    if (date >= 0) {
      return plan(TimePlan.Form.STAMP, headings, date);
    }
    for (int i = 0; i < headings.size(); i++) {
      if (kinds.get(i) == ColumnKind.NUMBER && isTime(headings.get(i), i)) {
        return plan(TimePlan.Form.FIGURES, headings, i);
      }
    }
    if (shape.headerLines().isEmpty() && looksLikeTime(shape)) {
      return plan(TimePlan.Form.FIGURES, headings, 0);
    }
    return new TimePlan(TimePlan.Form.NONE, List.of(), Optional.empty(), false);
  }

  /** Without a header: a first column of figures as large as an epoch or a serial, and growing. */
  private static boolean looksLikeTime(TableShape shape) {
    return shape.kinds().get(0) == ColumnKind.NUMBER && shape.firstColumnGrows();
  }

  private TimePlan plan(TimePlan.Form form, List<ColumnHeading> headings, int column) {
    ColumnHeading heading = headings.get(column);
    Optional<ColumnUnit> unit =
        heading.unit().or(() -> units.find(heading.header())).filter(ColumnUnit::isTime);
    boolean elapsed = vocabulary.topicsOf(heading.header()).containsKey(Topic.ELAPSED);
    return new TimePlan(form, List.of(column), unit, elapsed);
  }

  private boolean isTime(ColumnHeading heading, int column) {
    Optional<ColumnUnit> unit = heading.unit().or(() -> units.find(heading.header()));
    Map<Topic, Integer> topics = vocabulary.topicsOf(heading.name());
    boolean named = topics.containsKey(Topic.TIME) || topics.containsKey(Topic.ELAPSED);
    boolean measured = unit.map(ColumnUnit::isTime).orElse(false);
    boolean otherwise = topics.containsKey(Topic.STEP) || topics.containsKey(Topic.MESSAGE);
    boolean bareT = column == 0 && heading.name().equalsIgnoreCase("t") && unit.isEmpty();
    return (measured || named || bareT) && !otherwise && unit.map(ColumnUnit::isTime).orElse(true);
  }
}
