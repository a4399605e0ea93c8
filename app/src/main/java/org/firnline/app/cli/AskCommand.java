package org.firnline.app.cli;

import java.io.PrintWriter;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.firnline.app.ask.AskAnswer;
import org.firnline.app.ask.AskInput;
import org.firnline.app.ask.AskJson;
import org.firnline.app.ask.AskTopic;
import org.firnline.app.ask.AskTopics;
import org.firnline.app.ask.AskValues;
import org.firnline.app.ask.AskWords;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.evidence.InvalidInputException;
import org.firnline.planning.Verdict;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code firnline ask}: one-minute answers; every question is a word behind it. */
@Command(
    name = "ask",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "QUESTION",
    description = "One-minute answers: no file, no log, no account.")
final class AskCommand implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  AskCommand() {}

  /** The command with a word for every question. */
  static CommandLine commandLine() {
    CommandLine ask = new CommandLine(new AskCommand());
    AskWords words = new AskWords(Words.in(Locale.ENGLISH));
    for (AskTopic topic : AskTopics.all()) {
      ask.addSubcommand(topic.key(), question(topic, words));
    }
    return ask;
  }

  private static CommandSpec question(AskTopic topic, AskWords words) {
    Question question = new Question(topic, words);
    CommandSpec spec = CommandSpec.wrapWithoutInspection(question);
    spec.name(topic.key()).mixinStandardHelpOptions(true);
    spec.usageMessage().description(words.lead(topic));
    for (AskInput input : topic.inputs()) {
      String choices =
          input.choices().isEmpty() ? "" : " One of " + String.join(", ", input.choices()) + ".";
      spec.addOption(
          OptionSpec.builder("--" + input.key())
              .paramLabel("VALUE")
              .type(String.class)
              .description(
                  Quantities.plain(words.label(input))
                      .concat(".")
                      .concat(choices)
                      .concat(" Without it: " + standards(input) + ".")
                      .replace("%", "%%"))
              .build());
    }
    spec.addOption(
        OptionSpec.builder("--json")
            .type(boolean.class)
            .description("Answer in JSON, SI units in the keys.")
            .build());
    question.spec = spec;
    return spec;
  }

  private static String standards(AskInput input) {
    StringBuilder text = new StringBuilder(input.standard(""));
    input.standards().entrySet().stream()
        .filter(entry -> !entry.getKey().isEmpty())
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            entry -> text.append(", ").append(entry.getKey()).append(' ').append(entry.getValue()));
    return text.toString();
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to ask: a question is missing.");
  }

  /** One question as a command. */
  private static final class Question implements Callable<Integer> {
    private final AskTopic topic;
    private final AskWords words;
    private CommandSpec spec = CommandSpec.create();

    Question(AskTopic topic, AskWords words) {
      this.topic = topic;
      this.words = words;
    }

    @Override
    public Integer call() {
      Map<String, String> typed = new HashMap<>();
      for (AskInput input : topic.inputs()) {
        String given =
            spec.commandLine().getParseResult().matchedOptionValue("--" + input.key(), "");
        typed.put(input.key(), given);
      }
      boolean json = spec.commandLine().getParseResult().hasMatchedOption("--json");
      AskValues values = AskValues.read(topic, typed);
      if (!values.problems().isEmpty()) {
        return refuse(values.problems(), json);
      }
      try {
        return print(values, topic.answer(values), json);
      } catch (InvalidInputException e) {
        Map<String, String> problems = new LinkedHashMap<>();
        e.problems()
            .forEach(
                problem ->
                    problems.put(
                        problem.where(),
                        problem.what() + " " + problem.rule() + "; " + problem.advice()));
        return refuse(problems, json);
      }
    }

    private int print(AskValues values, AskAnswer answer, boolean json) {
      PrintWriter out = spec.commandLine().getOut();
      if (json) {
        out.println(JsonText.of(new AskJson(words).answer(topic, values, answer)));
      } else {
        List<List<String>> rows =
            answer.figures().stream()
                .map(
                    figure ->
                        List.of(
                            words.name(topic, figure),
                            Quantities.plain(words.value(figure)),
                            Quantities.plain(words.between(figure))))
                .toList();
        TextTable.of(rows).forEach(out::println);
        out.println();
        String advice = words.verdict(answer.verdict()) + ": " + words.advice(topic, answer);
        TextTable.hanging("", Quantities.plain(advice), 0, 78).forEach(out::println);
        out.println();
        out.println(words.title(topic));
        TextTable.of(
                values.texts().entrySet().stream()
                    .map(entry -> List.of("  " + entry.getKey(), entry.getValue()))
                    .toList())
            .forEach(out::println);
        TextTable.hanging("", words.caution(topic), 0, 78).forEach(out::println);
      }
      out.flush();
      return answer.verdict() == Verdict.STOP ? FirnlineCommand.STOP_LINE : FirnlineCommand.FINE;
    }

    private int refuse(Map<String, String> problems, boolean json) {
      if (json) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(JsonText.of(AskJson.problems(problems)));
        out.flush();
      }
      PrintWriter err = spec.commandLine().getErr();
      problems.forEach((key, problem) -> err.println(key + ": " + problem));
      err.flush();
      return FirnlineCommand.BAD_INPUT;
    }
  }
}
