package org.firnline.logs;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.TimeAxis;
import org.firnline.logs.form.FixedWidth;
import org.firnline.logs.form.JsonLines;
import org.firnline.logs.layout.ColumnHeading;
import org.firnline.logs.layout.ColumnKind;
import org.firnline.logs.layout.ColumnUnit;
import org.firnline.logs.layout.Dialect;
import org.firnline.logs.layout.HeadingReader;
import org.firnline.logs.layout.LongShape;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.TableFinder;
import org.firnline.logs.layout.TableShape;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.layout.TimePlanner;
import org.firnline.logs.layout.Topic;
import org.firnline.logs.layout.UnitSpellings;
import org.firnline.logs.layout.Vocabulary;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.table.TableContents;
import org.firnline.logs.table.TableReader;
import org.firnline.logs.text.ByteSource;
import org.firnline.logs.text.EncodingVerdict;
import org.firnline.logs.text.Lines;

/** Reads one table from its text to its log. */
final class TableReading {
  /** A heading and two rows. */
  private static final int FEWEST_LINES = 3;

  private final TextSource text;
  private final ReadingChoices choices;
  private final UnitSpellings units;
  private final Vocabulary vocabulary;
  private final ReadingNotes notes;

  TableReading(
      TextSource text, ReadingChoices choices, UnitSpellings units, Vocabulary vocabulary) {
    this.text = text;
    this.choices = choices;
    this.units = units;
    this.vocabulary = vocabulary;
    this.notes = new ReadingNotes(text.fileName());
  }

  /**
   * What was read.
   *
   * @param reading the table
   * @param nextTableLine line of the heading of another table below; 0 if there is none
   * @param encoding character set of the text
   */
  record Found(Reading reading, long nextTableLine, EncodingVerdict encoding) {
    Found {
      Objects.requireNonNull(reading, "reading");
      Objects.requireNonNull(encoding, "encoding");
    }
  }

  Found read() throws IOException {
    FileHead head = FileHead.of(text, choices, notes);
    if (head.isBlank()) {
      return refused(head, "logs.empty", "the file holds nothing", "a log needs rows of numbers");
    }
    boolean jsonLines = text.isOwn() && head.isJsonLines();
    if (jsonLines || (text.isOwn() && head.isJsonDocument())) {
      ByteSource table = JsonLines.table(text.bytes(), head.encoding(), jsonLines);
      String form = jsonLines ? "JSON lines" : "JSON";
      return rewritten(head, TextSource.rewritten(text.fileName(), form, table, List.of(), 0), "");
    }
    Optional<TableShape> shape =
        new TableFinder(units)
            .find(
                head.lines(),
                head.charset(),
                choices.delimiter().or(head::announcedDelimiter),
                choices.decimalMark());
    if (shape.isEmpty()) {
      String what = "no table of numbers found in the first " + head.lines().size() + " lines";
      return refused(head, "logs.no-table", what, "a log needs rows with a time and numbers");
    }
    TableShape first = earlier(head, shape.get()).orElse(shape.get());
    return readTable(head, text.isSheet() ? first.ragged() : first);
  }

  /** A smaller table with stamps that stands above the one that was found first. */
  private Optional<TableShape> earlier(FileHead head, TableShape found) {
    List<SampleLine> above = found.preamble();
    Optional<TableShape> table =
        above.size() < FEWEST_LINES
            ? Optional.empty()
            : new TableFinder(units)
                .find(
                    above,
                    head.charset(),
                    Optional.of(found.dialect().delimiter()),
                    Optional.of(found.dialect().decimalMark()));
    return table.filter(
        shape ->
            !shape.headerLines().isEmpty()
                && shape.kinds().stream().anyMatch(kind -> kind.isStamp())
                && shape.kinds().contains(ColumnKind.NUMBER)
                && above.get(above.size() - 1).number() > shape.bodyStart());
  }

  private Found refused(FileHead head, String code, String what, String rule) {
    String where =
        text.startLine() > 1 ? text.fileName() + " line " + text.startLine() : text.fileName();
    Problem problem =
        new Problem(
            code,
            what,
            where,
            rule,
            "export the log again as CSV, or choose delimiter and decimal mark by hand");
    Reading reading = LogReader.unreadable(text.fileName(), List.of(problem));
    return new Found(reading, 0, head.encoding());
  }

  /** Reads the same text in the form of a wide table, and says how the file itself looks. */
  private Found rewritten(FileHead head, TextSource table, String delimiter) throws IOException {
    Found inner = new TableReading(table, choices.forRewritten(), units, vocabulary).read();
    Layout wide = inner.reading().layout();
    Layout own =
        new Layout(
            table.form(),
            head.encoding().charset().name(),
            delimiter,
            wide.decimalMark(),
            wide.timeRule(),
            table.form().equals("fixed width") ? wide.headerLines() : List.of(),
            wide.header());
    Reading reading = inner.reading().withLayout(own).after(notes.guesses());
    return new Found(reading, inner.nextTableLine(), head.encoding());
  }

  private Found readTable(FileHead head, TableShape shape) throws IOException {
    Dialect dialect = shape.dialect();
    Rewriting rewriting = new Rewriting(text, head.encoding());
    if (dialect.delimiter() == ' ' && text.isOwn()) {
      Optional<FixedWidth> columns = rewriting.columns(head.lines(), shape);
      if (columns.isPresent()) {
        return rewritten(head, rewriting.fixedWidth(columns.get(), head.lines(), shape), "");
      }
    }
    if (text.isOwn()) {
      guessDialect(dialect);
    }
    List<SampleLine> before = new ArrayList<>(text.preamble());
    before.addAll(shape.preamble());
    Preamble preamble = Preamble.of(before, dialect.delimiter(), new StampScan(head.charset()));
    List<ColumnHeading> headings = described(new HeadingReader(units).read(shape), preamble);
    TimePlan plan = new TimePlanner(vocabulary, units).plan(shape, headings);
    Optional<LongShape> longShape = LongShape.of(shape, headings);
    if (longShape.isPresent()
        && !text.form().equals(TextSource.LONG)
        && !plan.columns().isEmpty()) {
      TextSource table = rewriting.longTable(shape, longShape.get(), plan, before, headings);
      return rewritten(head, table, dialect.delimiterWord());
    }
    TableContents contents;
    try (Lines lines = Lines.open(text.bytes(), head.encoding(), text.firstNumber())) {
      List<String> names = headings.stream().map(ColumnHeading::header).toList();
      contents = new TableReader(shape, plan, names, lines.charset(), this::isHeading).read(lines);
    }
    Reading reading =
        contents.lines().size() == 0
            ? noRows(head, shape, headings, contents)
            : assembled(head, shape, headings, preamble, contents);
    return new Found(reading, contents.nextTableLine(), head.encoding());
  }

  private void guessDialect(Dialect dialect) {
    notes.guess(
        "delimiter", dialect.delimiterWord(), dialect.reason(), dialect.confidence(), "delimiter");
    if (dialect.fractionsSeen()) {
      notes.guess(
          "decimal mark",
          String.valueOf(dialect.decimalMark()),
          dialect.reason(),
          dialect.confidence(),
          "decimalMark");
    }
  }

  /** Whether words can head a table: one names the time, or two or more carry a unit. */
  private boolean isHeading(List<String> words) {
    HeadingReader reader = new HeadingReader(units);
    long timed =
        words.stream()
            .map(vocabulary::topicsOf)
            .filter(topics -> topics.containsKey(Topic.TIME) || topics.containsKey(Topic.ELAPSED))
            .count();
    long measured = words.stream().filter(word -> reader.heading(word).unit().isPresent()).count();
    return timed + measured > 1 || (timed > 0 && words.size() > 2);
  }

  /** Adds what a table of channels in the preamble says about a column. */
  private List<ColumnHeading> described(List<ColumnHeading> headings, Preamble preamble) {
    List<ColumnHeading> all = new ArrayList<>();
    for (ColumnHeading heading : headings) {
      String description = preamble.descriptionOf(heading.name());
      ColumnHeading full = heading.withDescription(description);
      if (heading.unit().isEmpty() && !description.isEmpty()) {
        Optional<ColumnUnit> unit =
            Arrays.stream(description.split("[\\s,;()\\[\\]]+"))
                .flatMap(word -> units.find(word).stream())
                .findFirst();
        full = unit.isPresent() ? full.withUnit(unit.get()) : full;
      }
      all.add(full);
    }
    return all;
  }

  private Reading noRows(
      FileHead head, TableShape shape, List<ColumnHeading> headings, TableContents contents) {
    notes.problemAt(
        "logs.no-rows",
        "no line of the table could be used",
        shape.bodyStart(),
        "every row needs a time and its cells",
        "look at the rejected lines below and choose delimiter, decimal mark or encoding by hand");
    return reading(List.of(), layout(head, shape, headings, ""), contents);
  }

  private Reading reading(List<Log> log, Layout layout, TableContents contents) {
    return new Reading(
        text.fileName(),
        log.stream().findFirst(),
        layout,
        contents.ledger().counts(),
        contents.ledger().notes(),
        notes.guesses(),
        notes.questions(),
        notes.problems());
  }

  private Reading assembled(
      FileHead head,
      TableShape shape,
      List<ColumnHeading> headings,
      Preamble preamble,
      TableContents contents) {
    TimeReading.Placed placed =
        new TimeReading(choices, preamble, units, notes)
            .place(contents.time(), headings, contents.lines().size());
    List<ColumnSource> columns = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      if (!contents.time().plan().uses(i)) {
        columns.add(
            new ColumnSource(
                i, headings.get(i), contents.columns().get(i), shape.kinds().get(i).isStamp()));
      }
    }
    List<Channel> channels =
        new ChannelReading(choices, vocabulary, units, notes, contents).channels(columns);
    new PhysicalChecks(notes).check(channels);
    noteUnfinished(contents);
    TimeAxis time = TimeAxis.of(placed.times().line().toArray());
    MarkerReading markers = new MarkerReading(time, contents.lines());
    markers.addRemarks(shape.preamble());
    markers.addMarks(contents.marks());
    markers.addClockChanges(placed.times().changes());
    markers.addChannels(channels);
    Log log =
        new Log(
            text.fileName(), time, placed.basis(), channels, markers.markers(), preamble.entries());
    Layout layout = layout(head, shape, headings, placed.basis().rule());
    return reading(List.of(log), layout, contents);
  }

  private void noteUnfinished(TableContents contents) {
    if (contents.unfinishedLine() > 0) {
      notes.problemAt(
          "logs.unfinished",
          "the last line is not finished",
          contents.unfinishedLine(),
          "a line counts when its end is written",
          "read the file again when it has grown");
    }
  }

  private Layout layout(
      FileHead head, TableShape shape, List<ColumnHeading> headings, String timeRule) {
    Dialect dialect = shape.dialect();
    return new Layout(
        text.form(),
        head.encoding().charset().name(),
        text.isSheet() ? "" : dialect.delimiterWord(),
        dialect.fractionsSeen() ? String.valueOf(dialect.decimalMark()) : "",
        timeRule,
        shape.headerLines().stream().map(SampleLine::number).toList(),
        headings.stream().map(ColumnHeading::header).toList());
  }
}
