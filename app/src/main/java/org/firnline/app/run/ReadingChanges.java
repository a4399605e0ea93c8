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
  private static final List<String> ROLES = Arrays.stream(Role.values()).map(Role::label).toList();

  private final MessageSource words;

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
    for (Map.Entry<String, List<String>> one : options().entrySet()) {
      String choice = one.getKey();
      if (!asked.contains(choice)) {
        String text = words.getMessage("run.change." + choice, null, locale);
        layout.add(said.row(choice, text, guessed(reading, choice), one.getValue()));
      }
    }
    reading.guesses().stream()
        .filter(guess -> guess.choice().startsWith("clockOffset:"))
        .forEach(
            guess -> layout.add(said.row(guess.choice(), guess.what(), guess.value(), List.of())));
    List<ColumnRow> columns = reading.log().map(log -> columns(log, said)).orElse(List.of());
    return new RunView.Changes(!said.used.isEmpty(), List.copyOf(layout), columns);
  }

  private static Map<String, List<String>> options() {
    Map<String, List<String>> options = new java.util.LinkedHashMap<>();
    options.put("encoding", ENCODINGS);
    options.put("delimiter", DELIMITERS);
    options.put("decimalMark", MARKS);
    options.put("dateOrder", ORDERS);
    options.put("zone", List.of());
    options.put("clockNeverChanges", List.of("yes", "no"));
    return options;
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
