package org.firnline.app.plan;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.firnline.app.plan.PlanQuestions.Question;
import org.firnline.app.planfile.PlanText;

/**
 * What was typed into the plan page, and the plan file it amounts to.
 *
 * @param title the plan's title, may be empty
 * @param typed the answers as typed, by path; blank ones left out
 * @param ofDryer what is known about the chosen dryer, by path
 * @param now the clock of the laboratory, for "today" and "tomorrow"
 */
record PlanForm(
    String title, Map<String, String> typed, Map<String, String> ofDryer, LocalDateTime now) {
  private static final Pattern ONLY_A_NUMBER =
      Pattern.compile("[+\\-−]?[0-9][0-9.,]*(?:[eE][+\\-]?[0-9]+)?");

  private static final int LONGEST_ANSWER = 200;
  private static final int LONGEST_LIST = 8_000;

  /** The form from request parameters; unknown ones are ignored. */
  static PlanForm of(
      Map<String, String> parameters, Map<String, String> ofDryer, LocalDateTime now) {
    Map<String, String> typed = new LinkedHashMap<>();
    PlanQuestions.all()
        .forEach(
            question ->
                Optional.ofNullable(parameters.get(question.path()))
                    .map(String::strip)
                    .filter(answer -> !answer.isEmpty())
                    .ifPresent(
                        answer -> typed.put(question.path(), limited(question.path(), answer))));
    String title = Optional.ofNullable(parameters.get("plan")).map(String::strip).orElse("");
    return new PlanForm(limited("plan", title), typed, ofDryer, now);
  }

  /** The plan file: what was typed, and what the dryer is known to be where nothing was typed. */
  String yaml() {
    Map<String, String> values = new LinkedHashMap<>();
    if (!title.isEmpty()) {
      values.put("plan", title);
    }
    PlanQuestions.all()
        .map(Question::path)
        .forEach(path -> answer(path).ifPresent(answer -> values.put(path, answer)));
    return PlanText.write(values);
  }

  private Optional<String> answer(String path) {
    String answer = typed.get(path);
    if (answer == null) {
      return Optional.ofNullable(ofDryer.get(path));
    }
    if (path.equals("start")) {
      return Optional.of(SpokenTime.asWritten(answer, now));
    }
    String unit = PlanQuestions.find(path).map(Question::unit).orElse("");
    boolean bare = !unit.isEmpty() && ONLY_A_NUMBER.matcher(answer).matches();
    return Optional.of(bare ? answer + " " + unit : answer);
  }

  private static String limited(String path, String text) {
    int longest = path.equals("also") ? LONGEST_LIST : LONGEST_ANSWER;
    return text.substring(0, Math.min(longest, text.length()));
  }
}
