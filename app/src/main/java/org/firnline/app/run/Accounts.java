package org.firnline.app.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firnline.app.run.RunView.Account;
import org.firnline.app.run.RunView.ChannelRow;
import org.firnline.app.run.RunView.Fact;
import org.firnline.app.run.RunView.GuessRow;
import org.firnline.app.run.RunView.QuestionRow;
import org.firnline.app.words.Shown;
import org.firnline.logs.Layout;
import org.firnline.logs.Log;
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
  private final Shown shown;
  private final MessageSource words;

  Accounts(Shown shown, MessageSource words) {
    this.shown = shown;
    this.words = words;
  }

  Account of(Reading reading, Locale locale) {
    return new Account(
        facts(reading, locale),
        reading.guesses().stream()
            .map(
                guess ->
                    new GuessRow(
                        guess.what(), guess.value(), guess.reason(), guess.confidence().label()))
            .toList(),
        reading.questions().stream()
            .map(
                question ->
                    new QuestionRow(question.text(), question.assumed(), question.options()))
            .toList(),
        reading.rowNotes().stream().map(note -> note(note, locale)).toList(),
        reading.log().map(this::channels).orElse(List.of()),
        reading.log().map(Accounts::preamble).orElse(List.of()));
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
      case TEMPERATURE -> shown.celsiusFigure(low) + " to " + shown.celsius(high);
      case PRESSURE -> Figures.significant(low, 2) + " to " + shown.pascal(high);
      default -> Figures.significant(low, 3) + " to " + Figures.significant(high, 3);
    };
  }

  private static List<Fact> preamble(Log log) {
    return log.preamble().stream().map(entry -> new Fact(entry.key(), entry.value())).toList();
  }
}
