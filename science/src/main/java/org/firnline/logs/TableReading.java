package org.firnline.logs;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.TimeAxis;
import org.firnline.logs.form.JsonLines;
import org.firnline.logs.layout.ColumnHeading;
import org.firnline.logs.layout.ColumnUnit;
import org.firnline.logs.layout.Dialect;
import org.firnline.logs.layout.HeadingReader;
import org.firnline.logs.layout.LongShape;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.TableFinder;
import org.firnline.logs.layout.TableShape;
import org.firnline.logs.layout.TimePlan;
import org.firnline.logs.layout.TimePlanner;
import org.firnline.logs.layout.UnitSpellings;
import org.firnline.logs.layout.Vocabulary;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.table.TableContents;
import org.firnline.logs.table.TableReader;
import org.firnline.logs.text.ByteSource;
import org.firnline.logs.text.EncodingFinder;
import org.firnline.logs.text.EncodingVerdict;
import org.firnline.logs.text.Lines;

/** Reads one delimited file from its bytes to its log. */
final class TableReading {
  private static final int SAMPLE_LINES = 600;
  private static final int SAMPLE_BYTES = 1 << 20;

  private final String fileName;
  private final ByteSource source;
  private final ReadingChoices choices;
  private final UnitSpellings units;
  private final Vocabulary vocabulary;
  private final ReadingNotes notes;
  private final String form;

  TableReading(
      String fileName,
      ByteSource source,
      ReadingChoices choices,
      UnitSpellings units,
      Vocabulary vocabulary,
      String form) {
    this.form = form;
    this.fileName = fileName;
    this.source = source;
    this.choices = choices;
    this.units = units;
    this.vocabulary = vocabulary;
    this.notes = new ReadingNotes(fileName);
  }

  Reading read() throws IOException {
    EncodingVerdict encoding = encoding();
    List<SampleLine> sample = sample(encoding);
    if (sample.stream().allMatch(SampleLine::isBlank)) {
      return LogReader.unreadable(
          fileName,
          new Problem(
              "logs.empty",
              "the file holds nothing",
              fileName,
              "a log needs rows of numbers",
              "export the log again"));
    }
    if (isJsonLines(sample)) {
      return readAs(
          new Rewriting(source, encoding).jsonLines(), "JSON lines", encoding.charset(), "");
    }
    Optional<TableShape> shape =
        new TableFinder(units)
            .find(
                sample,
                sample.get(0).charset(),
                choices.delimiter().or(() -> announced(sample)),
                choices.decimalMark());
    if (shape.isEmpty()) {
      return LogReader.unreadable(
          fileName,
          new Problem(
              "logs.no-table",
              "no table of numbers found in the first " + sample.size() + " lines",
              fileName,
              "a log needs rows with a time and numbers",
              "choose delimiter and decimal mark by hand, or export the log as CSV"));
    }
    return readTable(encoding, shape.get(), sample.get(0).charset());
  }

  private static boolean isJsonLines(List<SampleLine> sample) {
    return sample.stream()
        .map(line -> line.text().strip())
        .filter(text -> text.length() > 2)
        .findFirst()
        .filter(JsonLines::isObject)
        .isPresent();
  }

  /** Reads the same file again in the form of a wide table, and says how the file itself looks. */
  private Reading readAs(byte[] table, String newForm, Charset charset, String delimiter)
      throws IOException {
    Reading inner =
        new TableReading(
                fileName,
                () -> new ByteArrayInputStream(table),
                choices.forRewritten(),
                units,
                vocabulary,
                newForm)
            .read();
    Layout wide = inner.layout();
    return inner.withLayout(
        new Layout(
            newForm,
            charset.name(),
            delimiter,
            wide.decimalMark(),
            wide.timeRule(),
            List.of(),
            wide.header()));
  }

  private EncodingVerdict encoding() throws IOException {
    if (choices.encoding().isPresent()) {
      return new EncodingVerdict(
          choices.encoding().get(), 0, "chosen by a person", Confidence.HIGH);
    }
    try (InputStream in = source.open()) {
      EncodingVerdict verdict = new EncodingFinder().find(in);
      notes.guess(
          "encoding", verdict.charset().name(), verdict.reason(), verdict.confidence(), "encoding");
      return verdict;
    }
  }

  private List<SampleLine> sample(EncodingVerdict encoding) throws IOException {
    List<SampleLine> sample = new ArrayList<>();
    int bytes = 0;
    try (Lines lines = Lines.open(source, encoding)) {
      while (sample.size() < SAMPLE_LINES && bytes < SAMPLE_BYTES && lines.advance()) {
        byte[] line = Arrays.copyOfRange(lines.buffer(), lines.from(), lines.to());
        bytes += line.length;
        sample.add(new SampleLine(lines.number(), line, lines.charset()));
      }
    }
    return sample;
  }

  /** The delimiter a first line such as "sep=;" announces. */
  private static Optional<Character> announced(List<SampleLine> sample) {
    String first = sample.get(0).text().replace("\uFEFF", "").stripLeading().replace("\"", "");
    boolean announces = TableFinder.isAnnouncement(sample.get(0)) && first.length() > 4;
    return announces ? Optional.of(first.charAt(4)) : Optional.empty();
  }

  private Reading readTable(EncodingVerdict encoding, TableShape shape, Charset charset)
      throws IOException {
    Dialect dialect = shape.dialect();
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
    StampScan stamps = new StampScan(charset);
    Preamble preamble = Preamble.of(shape.preamble(), dialect.delimiter(), stamps);
    List<ColumnHeading> headings = described(new HeadingReader(units).read(shape), preamble);
    TimePlan plan = new TimePlanner(vocabulary, units).plan(shape, headings);
    Optional<LongShape> longShape = LongShape.of(shape, headings);
    if (longShape.isPresent() && form.equals("delimited") && !plan.columns().isEmpty()) {
      return readAs(
          new Rewriting(source, encoding).longTable(shape, longShape.get(), plan),
          "long",
          encoding.charset(),
          dialect.delimiterWord());
    }
    TableContents contents;
    try (Lines lines = Lines.open(source, encoding)) {
      List<String> names = headings.stream().map(ColumnHeading::header).toList();
      contents = new TableReader(shape, plan, names, lines.charset()).read(lines);
    }
    if (contents.lines().size() == 0) {
      return noRows(encoding, shape, headings, contents);
    }
    return assembled(encoding, shape, headings, preamble, contents);
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
      EncodingVerdict encoding,
      TableShape shape,
      List<ColumnHeading> headings,
      TableContents contents) {
    notes.problemAt(
        "logs.no-rows",
        "no line of the table could be used",
        shape.bodyStart(),
        "every row needs a time and its cells",
        "look at the rejected lines below and choose delimiter, decimal mark or encoding by hand");
    return new Reading(
        fileName,
        Optional.empty(),
        layout(encoding, shape, headings, ""),
        contents.ledger().counts(),
        contents.ledger().notes(),
        notes.guesses(),
        notes.questions(),
        notes.problems());
  }

  private Reading assembled(
      EncodingVerdict encoding,
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
        columns.add(new ColumnSource(i, headings.get(i), contents.columns().get(i)));
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
        new Log(fileName, time, placed.basis(), channels, markers.markers(), preamble.entries());
    return new Reading(
        fileName,
        Optional.of(log),
        layout(encoding, shape, headings, placed.basis().rule()),
        contents.ledger().counts(),
        contents.ledger().notes(),
        notes.guesses(),
        notes.questions(),
        notes.problems());
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
      EncodingVerdict encoding, TableShape shape, List<ColumnHeading> headings, String timeRule) {
    Dialect dialect = shape.dialect();
    return new Layout(
        form,
        encoding.charset().name(),
        dialect.delimiterWord(),
        dialect.fractionsSeen() ? String.valueOf(dialect.decimalMark()) : "",
        timeRule,
        shape.headerLines().stream().map(SampleLine::number).toList(),
        headings.stream().map(ColumnHeading::header).toList());
  }
}
