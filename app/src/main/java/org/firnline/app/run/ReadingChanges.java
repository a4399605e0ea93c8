package org.firnline.app.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.firnline.app.reading.ChosenReading;
import org.firnline.app.run.RunView.ColumnRow;
import org.firnline.app.run.RunView.QuestionRow;
import org.firnline.logs.Guess;
import org.firnline.logs.Log;
import org.firnline.logs.Reading;
import org.firnline.logs.channel.Role;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** The form in which a person may read a kept file another way. */
@Component
class ReadingChanges {
  private static final List<String> ENCODINGS =
      List.of("UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252", "IBM437", "Shift_JIS");
  private static final List<String> DELIMITERS = List.of(",", ";", "tab", "|", "space");
  private static final List<String> MARKS = List.of(".", ",");
  private static final List<String> ORDERS =
      List.of("day month year", "month day year", "year month day");
  private static final List<Sayable> SAYABLE =
      List.of(
          new Sayable("encoding", "run.change.encoding", ENCODINGS),
          new Sayable("delimiter", "run.change.delimiter", DELIMITERS),
          new Sayable("decimalMark", "run.change.decimalMark", MARKS),
          new Sayable("dateOrder", "run.change.dateOrder", ORDERS),
          new Sayable("zone", "run.change.zone", List.of()),
          new Sayable("clockNeverChanges", "run.change.clockNeverChanges", List.of("yes", "no")));
  private static final List<String> ROLES = Arrays.stream(Role.values()).map(Role::label).toList();

  private final MessageSource words;

  /** A choice about the file as a whole, the key of its words, and what may be said. */
  private record Sayable(String choice, String text, List<String> options) {}

  ReadingChanges(MessageSource words) {
    this.words = words;
  }

  /**
   * The form for a reading.
   *
   * @param asked choices that are asked elsewhere on the page
   * @param answers what was said before
   * @param refused which of that cannot be used
   */
  RunView.Changes of(
      Reading reading,
      Set<String> asked,
      Map<String, String> answers,
      Set<String> refused,
      Locale locale) {
    Said said = new Said(answers, refused);
    List<QuestionRow> layout = new ArrayList<>();
    for (Sayable one : SAYABLE) {
      if (!asked.contains(one.choice())) {
        String text = words.getMessage(one.text(), null, locale);
        layout.add(said.row(one.choice(), text, guessed(reading, one.choice()), one.options()));
      }
    }
    reading.guesses().stream()
        .filter(guess -> guess.choice().startsWith("clockOffset:"))
        .forEach(
            guess -> layout.add(said.row(guess.choice(), guess.what(), guess.value(), List.of())));
    List<ColumnRow> columns = reading.log().map(log -> columns(log, said)).orElse(List.of());
    return new RunView.Changes(!said.used.isEmpty(), List.copyOf(layout), columns);
  }

  private static String guessed(Reading reading, String choice) {
    return reading.guesses().stream()
        .filter(guess -> guess.choice().equals(choice))
        .map(Guess::value)
        .findFirst()
        .orElse("");
  }

  private static List<ColumnRow> columns(Log log, Said said) {
    return log.channels().stream()
        .map(
            channel ->
                new ColumnRow(
                    channel.name(),
                    said.row(
                        ChosenReading.ROLE + channel.name(), "", channel.role().label(), ROLES),
                    said.row(ChosenReading.UNIT + channel.name(), "", channel.unit(), List.of())))
        .toList();
  }

  /** What was said before; remembers which of it the form shows. */
  private static final class Said {
    private final Map<String, String> answers;
    private final Set<String> refused;
    private final Set<String> used = new HashSet<>();

    Said(Map<String, String> answers, Set<String> refused) {
      this.answers = answers;
      this.refused = refused;
    }

    QuestionRow row(String choice, String text, String worked, List<String> options) {
      String answer = answers.getOrDefault(choice, "");
      if (!answer.isEmpty()) {
        used.add(choice);
      }
      return new QuestionRow(choice, text, worked, options, answer, refused.contains(choice));
    }
  }
}
