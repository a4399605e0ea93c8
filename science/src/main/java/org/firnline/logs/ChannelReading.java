package org.firnline.logs;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.Series;
import org.firnline.logs.layout.ColumnFacts;
import org.firnline.logs.layout.ColumnHeading;
import org.firnline.logs.layout.ColumnUnit;
import org.firnline.logs.layout.RoleFinder;
import org.firnline.logs.layout.RoleVerdict;
import org.firnline.logs.layout.UnitSpellings;
import org.firnline.logs.layout.ValueShape;
import org.firnline.logs.layout.Vocabulary;
import org.firnline.logs.table.ColumnBuilder;
import org.firnline.logs.table.LineNumbers;
import org.firnline.logs.table.RowLedger;
import org.firnline.logs.table.TableContents;

/** Makes channels of columns: decides roles and units, and says what it guessed or must ask. */
final class ChannelReading {
  private final ReadingChoices choices;
  private final UnitSpellings units;
  private final RoleFinder roles;
  private final ReadingNotes notes;
  private final RowLedger ledger;
  private final LineNumbers lines;

  ChannelReading(
      ReadingChoices choices,
      Vocabulary vocabulary,
      UnitSpellings units,
      ReadingNotes notes,
      TableContents contents) {
    this.ledger = contents.ledger();
    this.lines = contents.lines();
    this.choices = choices;
    this.units = units;
    this.roles = new RoleFinder(vocabulary, units);
    this.notes = notes;
  }

  /** The channels of the columns in file order; empty unnamed columns are left out. */
  List<Channel> channels(List<ColumnSource> columns) {
    List<ColumnSource> used =
        columns.stream()
            .filter(column -> !(column.heading().header().isEmpty() && column.cells().isEmpty()))
            .toList();
    List<ColumnFacts> facts = used.stream().map(this::facts).toList();
    List<RoleVerdict> found = new ArrayList<>();
    for (int i = 0; i < used.size(); i++) {
      RoleVerdict verdict = roles.find(facts.get(i));
      found.add(
          used.get(i).isStamp()
              ? verdict.as(Role.IGNORED, Confidence.HIGH, "another column is taken as the time")
              : verdict);
    }
    List<RoleVerdict> proposed = new ProposedRoles(roles).propose(found, facts);
    List<RoleVerdict> settled = new GaugeKinds().settle(proposed, used);
    List<Channel> channels = new ArrayList<>();
    for (int i = 0; i < used.size(); i++) {
      channels.add(channel(used.get(i), chosen(used.get(i), settled.get(i))));
    }
    return channels;
  }

  private ColumnFacts facts(ColumnSource column) {
    ColumnHeading heading = column.heading();
    ColumnBuilder cells = column.cells();
    Optional<ColumnUnit> written =
        heading.unit().or(() -> units.find(cells.unit().isEmpty() ? "?" : cells.unit()));
    ColumnHeading full = written.isPresent() ? heading.withUnit(written.get()) : heading;
    Optional<ValueShape> shape =
        cells.isText() ? Optional.empty() : ValueShape.of(cells.numbers(1, 0));
    return new ColumnFacts(full, cells.isText(), shape);
  }

  private RoleVerdict chosen(ColumnSource column, RoleVerdict found) {
    ColumnChoice choice =
        Optional.ofNullable(choices.columns().get(column.heading().header()))
            .or(() -> Optional.ofNullable(choices.columns().get("#" + (column.index() + 1))))
            .or(() -> Optional.ofNullable(choices.columns().get(nameOf(column))))
            .orElse(new ColumnChoice(Optional.empty(), Optional.empty()));
    RoleVerdict verdict = found;
    if (choice.role().isPresent()) {
      verdict = verdict.as(choice.role().get(), Confidence.HIGH, "chosen by a person");
    }
    Optional<ColumnUnit> unit = choice.unit().flatMap(units::find);
    return unit.isPresent()
        ? verdict.in(unit.get(), Confidence.HIGH, "chosen by a person")
        : verdict;
  }

  private static String nameOf(ColumnSource column) {
    String name = column.heading().name();
    return name.isEmpty() ? "column " + (column.index() + 1) : name;
  }

  private Channel channel(ColumnSource column, RoleVerdict verdict) {
    ColumnHeading heading = column.heading();
    ColumnBuilder cells = column.cells();
    String name = nameOf(column);
    explain(column, name, verdict);
    if (cells.isText()) {
      return new Channel(
          name,
          verdict.role(),
          verdict.roleConfidence(),
          "",
          Confidence.HIGH,
          cells.texts(),
          cells.labels());
    }
    double scale = verdict.unit().map(ColumnUnit::factor).orElse(heading.scale());
    double offset = verdict.unit().map(ColumnUnit::offset).orElse(0.0);
    Series series = withoutSentinels(column, verdict, cells.numbers(scale, offset));
    if (VacuumGauge.counts(verdict, cells.numbers(1, 0))) {
      series = VacuumGauge.absolute(verdict, series);
      notes.guess(
          "zero of " + name,
          "vacuum below an assumed atmosphere of 29.92 inHg",
          "it stands high while the dryer works; too coarse for an end of drying",
          Confidence.MEDIUM,
          "column:" + column.key());
    }
    String unit =
        verdict
            .unit()
            .map(u -> u.spelling().isEmpty() ? u.unit().symbol() : u.spelling())
            .orElse("");
    return new Channel(
        name,
        verdict.role(),
        verdict.roleConfidence(),
        unit,
        verdict.unitConfidence(),
        series,
        List.of());
  }

  private Series withoutSentinels(ColumnSource column, RoleVerdict verdict, Series series) {
    if (verdict.unit().isEmpty()) {
      return series;
    }
    BitSet found = new NumericSentinels().find(series, verdict.unit().get());
    for (int row = found.nextSetBit(0); row >= 0; row = found.nextSetBit(row + 1)) {
      ledger.flag(
          row,
          lines.lineOf(row),
          column.key(),
          "open sensor: the number stands for no sensor, or none can show it");
    }
    return found.isEmpty() ? series : series.flagged(found, Quality.OPEN_SENSOR);
  }

  private void explain(ColumnSource column, String name, RoleVerdict verdict) {
    String choice = "column:" + column.key();
    if (verdict.roleConfidence() != Confidence.HIGH) {
      notes.guess(
          "role of " + name,
          verdict.role().label(),
          verdict.roleReason(),
          verdict.roleConfidence(),
          choice);
    }
    if (verdict.unit().isPresent() && verdict.unitConfidence() != Confidence.HIGH) {
      notes.guess(
          "unit of " + name,
          verdict.unit().get().unit().symbol(),
          verdict.unitReason(),
          verdict.unitConfidence(),
          choice);
    }
    boolean proposed = verdict.roleConfidence() == Confidence.LOW && verdict.role() != Role.UNKNOWN;
    if (proposed) {
      ask(
          "Is \"" + name + "\" the " + verdict.role().label() + "?",
          verdict.role().label(),
          choice);
    } else if (verdict.role() == Role.UNKNOWN) {
      ask("What does \"" + name + "\" measure?", "unknown", choice);
    } else if (verdict.unit().isPresent() && verdict.unitConfidence() == Confidence.LOW) {
      ask(
          "In which unit is \"" + name + "\" (" + verdict.role().label() + ")?",
          verdict.unit().get().unit().symbol(),
          choice);
    }
  }

  private void ask(String text, String assumed, String choice) {
    notes.ask(
        Question.Kind.UNIT_OR_ROLE,
        text + " The file does not say it, and its values do not settle it.",
        List.of(),
        assumed,
        choice);
  }
}
