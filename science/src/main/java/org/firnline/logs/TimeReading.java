package org.firnline.logs;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.layout.ColumnHeading;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.layout.UnitSpellings;
import org.firnline.logs.stamp.ClockLine;
import org.firnline.logs.stamp.DateFields;
import org.firnline.logs.stamp.DateOrderFinder;
import org.firnline.logs.stamp.DateOrderVerdict;
import org.firnline.logs.stamp.ElapsedCount;
import org.firnline.logs.stamp.FigureTimes;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampColumn;
import org.firnline.logs.stamp.UtcTimes;
import org.firnline.logs.stamp.ZoneWords;
import org.firnline.logs.table.TimeCells;

/** Decides what the time cells of a file mean, and says what it had to guess or must ask. */
final class TimeReading {
  private static final ZoneId UTC = ZoneId.of("UTC");
  private static final Instant ASSUMED_START = Instant.EPOCH;
  private static final double ASSUMED_INTERVAL_S = 60;

  private final ReadingChoices choices;
  private final Preamble preamble;
  private final UnitSpellings units;
  private final ReadingNotes notes;

  TimeReading(ReadingChoices choices, Preamble preamble, UnitSpellings units, ReadingNotes notes) {
    this.choices = choices;
    this.preamble = preamble;
    this.units = units;
    this.notes = notes;
  }

  /** Times of all rows and how they came about. */
  Placed place(TimeCells cells, List<ColumnHeading> headings, int rows) {
    TimePlan plan = cells.plan();
    return switch (plan.form()) {
      case STAMP, DATE_AND_CLOCK -> stamps(cells.stamps(), plan, headings);
      case CLOCK -> clock(cells.stamps(), plan, headings);
      case FIGURES -> figures(cells.figures(), plan, headings);
      case NONE -> order(rows);
    };
  }

  private Placed stamps(StampColumn stamps, TimePlan plan, List<ColumnHeading> headings) {
    DateFields.Order order = order(stamps);
    ZoneId zone = zone(stamps, plan, headings);
    UtcTimes times =
        new ClockLine(zone, choices.clockNeverChanges()).place(stamps, order, LocalDate.EPOCH);
    String form = plan.form() == TimePlan.Form.STAMP ? "one column" : "date and clock columns";
    String dates = order.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    String rule = dates + " in " + form + "; " + times.zoneRule();
    return new Placed(times, new TimeBasis(times.zone(), rule, true));
  }

  private DateFields.Order order(StampColumn stamps) {
    if (choices.dateOrder().isPresent()) {
      return DateFields.Order.valueOf(choices.dateOrder().get().name());
    }
    DateOrderVerdict verdict =
        new DateOrderFinder().find(stamps.dates(), choices.fileTime(), preamble.days());
    String value = DateOrder.valueOf(verdict.order().name()).label();
    if (verdict.isTied()) {
      List<String> options =
          verdict.open().stream().map(open -> DateOrder.valueOf(open.name()).label()).toList();
      notes.ask(
          Question.Kind.DATE_ORDER,
          "Which comes first in the dates of this file, the day or the month? "
              + "Every date in it can be read both ways.",
          options,
          value,
          "dateOrder");
    }
    notes.guess("date order", value, verdict.reason(), verdict.confidence(), "dateOrder");
    return verdict.order();
  }

  private ZoneId zone(StampColumn stamps, TimePlan plan, List<ColumnHeading> headings) {
    if (stamps.size() > 0 && stamps.offset_min(0) != Stamp.NO_OFFSET) {
      return UTC;
    }
    return localZone(plan, headings);
  }

  private ZoneId localZone(TimePlan plan, List<ColumnHeading> headings) {
    if (choices.zone().isPresent()) {
      notes.guess(
          "zone", choices.zone().get().getId(), "chosen for this source", Confidence.HIGH, "zone");
      return choices.zone().get();
    }
    Optional<ZoneId> headed =
        plan.columns().stream()
            .map(headings::get)
            .flatMap(heading -> zoneIn(heading.header()).stream())
            .findFirst();
    Optional<ZoneId> written = headed.or(preamble::zone);
    if (written.isPresent()) {
      notes.guess("zone", written.get().getId(), "the file names it", Confidence.HIGH, "zone");
      return written.get();
    }
    notes.ask(
        Question.Kind.ZONE,
        "In which time zone does the logger's clock run? The file does not say.",
        List.of(),
        "UTC",
        "zone");
    notes.guess("zone", "UTC", "the file names none; assumed", Confidence.LOW, "zone");
    return UTC;
  }

  private static Optional<ZoneId> zoneIn(String header) {
    ZoneWords zones = new ZoneWords();
    for (String part : header.split("[\\s_\\[\\](){},;]+", -1)) {
      Optional<ZoneId> zone = part.length() < 2 ? Optional.empty() : zones.find(part);
      if (zone.isPresent()) {
        return zone;
      }
    }
    return Optional.empty();
  }

  private Placed clock(StampColumn stamps, TimePlan plan, List<ColumnHeading> headings) {
    if (isElapsed(stamps, plan)) {
      long[] elapsed = new long[stamps.size()];
      for (int i = 0; i < elapsed.length; i++) {
        elapsed[i] = stamps.clock_ms(i);
      }
      return elapsed(elapsed, "elapsed h:mm:ss");
    }
    List<LocalDate> days = preamble.days();
    ZoneId zone = localZone(plan, headings);
    LocalDate first =
        choices
            .start()
            .map(start -> start.atZone(zone).toLocalDate())
            .or(() -> days.stream().findFirst())
            .orElse(LocalDate.EPOCH);
    boolean known = choices.start().isPresent() || !days.isEmpty();
    if (!known) {
      notes.guess(
          "date of the first row",
          first.toString(),
          "the file holds only clock times",
          Confidence.LOW,
          "start");
    }
    UtcTimes times =
        new ClockLine(zone, choices.clockNeverChanges())
            .place(stamps, DateFields.Order.YEAR_MONTH_DAY, first);
    String rule = "clock times without dates; " + times.zoneRule();
    return new Placed(times, new TimeBasis(zone, rule, known));
  }

  private static boolean isElapsed(StampColumn stamps, TimePlan plan) {
    boolean fromZero = stamps.size() > 1 && stamps.clock_ms(0) == 0;
    boolean beyondDay = false;
    for (int i = 0; i < stamps.size(); i++) {
      beyondDay |= stamps.clock_ms(i) >= 86_400_000L;
    }
    return plan.saysElapsed() || fromZero || beyondDay;
  }

  private Placed figures(double[] figures, TimePlan plan, List<ColumnHeading> headings) {
    Optional<Double> unit_s = plan.unit().map(unit -> unit.factor());
    String word = plan.unit().map(unit -> unit.spelling()).orElse("");
    FigureTimes meaning = FigureTimes.judge(figures, unit_s, word, preamble.interval_s(units));
    long[] millis = meaning.toMillis(figures);
    if (meaning.kind() == FigureTimes.Kind.EPOCH) {
      UtcTimes times = new ClockLine(UTC, false).place(millis, meaning.rule());
      notes.guess("time", meaning.rule(), "size of the figures", meaning.confidence(), "start");
      return new Placed(times, new TimeBasis(UTC, meaning.rule(), true));
    }
    if (meaning.kind() == FigureTimes.Kind.SERIAL) {
      ZoneId zone = localZone(plan, headings);
      notes.guess("time", meaning.rule(), "size of the figures", meaning.confidence(), "start");
      UtcTimes times =
          new ClockLine(zone, choices.clockNeverChanges()).placeLocal(millis, meaning.rule());
      return new Placed(times, new TimeBasis(zone, meaning.rule(), true));
    }
    if (meaning.confidence() == Confidence.LOW) {
      String column = headings.get(plan.columns().get(0)).header();
      notes.ask(
          Question.Kind.UNIT_OR_ROLE,
          "In which unit does \"" + column + "\" count the time? The file does not say.",
          List.of("s", "min", "h"),
          "s",
          "column:" + column);
    }
    return elapsed(millis, meaning.rule());
  }

  private Placed order(int rows) {
    double interval = preamble.interval_s(units).orElse(ASSUMED_INTERVAL_S);
    boolean known = preamble.interval_s(units).isPresent();
    if (!known) {
      notes.problem(
          "logs.no-time",
          "no column holds a time",
          "durations need one",
          "rows are taken as 60 s apart; add a time column or an interval line");
    }
    long[] millis = new long[rows];
    for (int i = 0; i < rows; i++) {
      millis[i] = Math.round(i * interval * 1000);
    }
    String source = known ? "the interval the file names" : "an assumed interval of 60 s";
    return elapsed(millis, "row number times " + source);
  }

  private Placed elapsed(long[] millis, String rule) {
    Optional<Long> local = preamble.startLocal_ms();
    Instant start = ASSUMED_START;
    boolean known = true;
    if (choices.start().isPresent()) {
      start = choices.start().get().minusMillis(millis.length == 0 ? 0 : millis[0]);
    } else if (local.isPresent()) {
      ZoneId zone =
          localZone(new TimePlan(TimePlan.Form.NONE, List.of(), Optional.empty(), true), List.of());
      start =
          Instant.ofEpochMilli(local.get())
              .atZone(ZoneOffset.UTC)
              .toLocalDateTime()
              .atZone(zone)
              .toInstant();
    } else {
      known = false;
      notes.guess(
          "start",
          start.toString(),
          "the file holds only elapsed times: durations are right, dates are not",
          Confidence.LOW,
          "start");
    }
    ElapsedCount count = ElapsedCount.of(millis);
    long[] utc = count.from(start.toEpochMilli());
    String full = rule + (known ? " from " + start : ", start assumed") + count.rule();
    UtcTimes times = new ClockLine(UTC, false).place(utc, full);
    return new Placed(times, new TimeBasis(UTC, full, known));
  }

  /**
   * Times of all rows and how they came about.
   *
   * @param times the times
   * @param basis how they came about
   */
  record Placed(UtcTimes times, TimeBasis basis) {}
}
