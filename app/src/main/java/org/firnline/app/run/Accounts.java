package org.firnline.app.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.firnline.app.reading.ChosenReading;
import org.firnline.app.run.RunView.Account;
import org.firnline.app.run.RunView.ChannelRow;
import org.firnline.app.run.RunView.Fact;
import org.firnline.app.run.RunView.GuessRow;
import org.firnline.app.run.RunView.QuestionRow;
import org.firnline.app.words.Shown;
import org.firnline.logs.Layout;
import org.firnline.logs.Log;
import org.firnline.logs.Question;
import org.firnline.logs.Reading;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Dimension;
import org.firnline.logs.table.RowNote;
import org.firnline.units.Figures;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** The account of how a file was read. */
@Component
class Accounts {
  /** A question about a column that was answered, so that the reader asks it no more. */
  private static final String ASKED_COLUMN = "column:";

  private final Shown shown;
  private final MessageSource words;
  private final ReadingChanges changes;

  Accounts(Shown shown, MessageSource words, ReadingChanges changes) {
    this.shown = shown;
    this.words = words;
    this.changes = changes;
  }

  /**
   * The account of a file.
   *
   * @param answers what was answered about it
   * @param refused which of the answers cannot be used
   */
  Account of(Reading reading, Map<String, String> answers, Set<String> refused, Locale locale) {
    List<QuestionRow> asked = questions(reading, answers, locale);
    Set<String> choices = asked.stream().map(QuestionRow::choice).collect(Collectors.toSet());
    return new Account(
        facts(reading, locale),
        reading.guesses().stream()
            .map(
                guess ->
                    new GuessRow(
                        guess.what(), guess.value(), guess.reason(), guess.confidence().label()))
            .toList(),
        asked.stream()
            .map(
                row ->
                    new QuestionRow(
                        row.choice(),
                        row.text(),
                        row.assumed(),
                        row.options(),
                        Optional.ofNullable(answers.get(row.choice())).orElse(""),
                        refused.contains(row.choice())))
            .toList(),
        changes.of(reading, choices, answers, refused, locale),
        reading.rowNotes().stream().map(note -> note(note, locale)).toList(),
        reading.log().map(this::channels).orElse(List.of()),
        reading.log().map(Accounts::preamble).orElse(List.of()));
  }

  /** What the reader asks, when the log began if nobody says, and what was answered before. */
  private List<QuestionRow> questions(Reading reading, Map<String, String> answers, Locale locale) {
    Map<String, QuestionRow> rows = new LinkedHashMap<>();
    for (Question asked : reading.questions()) {
      rows.put(
          asked.choice(),
          new QuestionRow(
              asked.choice(), asked.text(), asked.assumed(), asked.options(), "", false));
    }
    boolean startKnown = reading.log().map(log -> log.basis().startKnown()).orElse(true);
    if (!startKnown || answers.containsKey(ChosenReading.START)) {
      String text = words.getMessage("run.account.start", null, locale);
      String assumed = words.getMessage("run.account.start.unknown", null, locale);
      rows.put(
          ChosenReading.START,
          new QuestionRow(ChosenReading.START, text, assumed, List.of(), "", false));
    }
    answers.keySet().stream()
        .filter(choice -> choice.startsWith(ASKED_COLUMN) && !rows.containsKey(choice))
        .forEach(
            choice ->
                rows.put(
                    choice,
                    new QuestionRow(
                        choice,
                        choice.substring(ASKED_COLUMN.length()),
                        "",
                        List.of(),
                        "",
                        false)));
    return List.copyOf(rows.values());
  }

  private List<Fact> facts(Reading reading, Locale locale) {
    Layout layout = reading.layout();
    List<Fact> facts = new ArrayList<>();
    fact(facts, "form", layout.form(), locale);
    fact(facts, "encoding", layout.encoding(), locale);
    fact(facts, "delimiter", layout.delimiter(), locale);
    fact(facts, "decimal", layout.decimalMark(), locale);
    fact(facts, "time", layout.timeRule(), locale);
    reading.log().ifPresent(log -> fact(facts, "zone", log.basis().zone().getId(), locale));
    Object[] rows = {
      reading.rows().read(),
      reading.rows().kept(),
      reading.rows().flagged(),
      reading.rows().setAside(),
      reading.rows().rejected()
    };
    fact(facts, "rows", words.getMessage("run.account.rows.text", rows, locale), locale);
    return List.copyOf(facts);
  }

  private void fact(List<Fact> facts, String key, String value, Locale locale) {
    if (!value.isEmpty()) {
      facts.add(new Fact(words.getMessage("run.account." + key, null, locale), value));
    }
  }

  private String note(RowNote note, Locale locale) {
    String key = note.firstLine() == note.lastLine() ? "run.account.line" : "run.account.lines";
    Object[] where = {
      String.valueOf(note.firstLine()),
      String.valueOf(note.lastLine()),
      note.rows(),
      note.fate().label(),
      note.column().isEmpty() ? "" : note.column() + ": ",
      note.reason()
    };
    return words.getMessage(key, where, locale);
  }

  private List<ChannelRow> channels(Log log) {
    return log.channels().stream()
        .map(
            channel ->
                new ChannelRow(
                    channel.name(),
                    channel.role().label(),
                    channel.unit(),
                    channel.roleConfidence().and(channel.unitConfidence()).label(),
                    range(channel)))
        .toList();
  }

  private String range(Channel channel) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < channel.series().size(); i++) {
      double value = channel.series().value(i);
      if (!Double.isNaN(value)) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    if (low > high || channel.role().dimension() == Dimension.TEXT) {
      return "";
    }
    return switch (channel.role().dimension()) {
      case TEMPERATURE -> shown.between(shown.celsiusFigure(low), shown.celsius(high));
      case PRESSURE -> shown.between(Figures.significant(low, 2), shown.pascal(high));
      default -> shown.between(Figures.significant(low, 3), Figures.significant(high, 3));
    };
  }

  private static List<Fact> preamble(Log log) {
    return log.preamble().stream().map(entry -> new Fact(entry.key(), entry.value())).toList();
  }
}
