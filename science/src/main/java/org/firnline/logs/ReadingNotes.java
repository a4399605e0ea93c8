package org.firnline.logs;

import java.util.ArrayList;
import java.util.List;
import org.firnline.evidence.Problem;
import org.firnline.logs.channel.Confidence;

/** Collects what a reading has to say about itself while the file is read. */
final class ReadingNotes {
  private final String fileName;
  private final List<Guess> guesses = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  ReadingNotes(String fileName) {
    this.fileName = fileName;
  }

  void guess(String what, String value, String reason, Confidence confidence, String choice) {
    guesses.add(new Guess(what, value, reason, confidence, choice));
  }

  void ask(Question.Kind kind, String text, List<String> options, String assumed, String choice) {
    questions.add(new Question(kind, text, options, assumed, choice));
  }

  void problem(String code, String what, String rule, String advice) {
    problems.add(new Problem(code, what, fileName, rule, advice));
  }

  void problemAt(String code, String what, long line, String rule, String advice) {
    problems.add(new Problem(code, what, fileName + " line " + line, rule, advice));
  }

  List<Guess> guesses() {
    return guesses;
  }

  List<Question> questions() {
    return questions;
  }

  List<Problem> problems() {
    return problems;
  }
}
