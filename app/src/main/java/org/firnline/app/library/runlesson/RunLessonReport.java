package org.firnline.app.library.runlesson;

import java.util.ArrayList;
import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.learning.run.Learned;
import org.firnline.learning.run.Parameter;
import org.firnline.learning.run.RunLesson;
import org.firnline.review.Finding;
import org.firnline.units.Figures;
import org.firnline.units.QuantityKind;

/** What a run teaches, for people at a terminal. */
public final class RunLessonReport {
  private static final int WIDTH = 92;
  private static final double HANG_TOGETHER = 0.5;
  private static final double LARGE = 1e4;

  private final Words words;

  public RunLessonReport(Words words) {
    this.words = words;
  }

  /** Lines ready to print. */
  public String of(RunLessons lessons) {
    List<String> lines = new ArrayList<>();
    if (!lessons.refusals().isEmpty()) {
      lines.addAll(TextTable.hanging("", words.say("lesson.refused"), 0, WIDTH));
      for (Finding finding : lessons.refusals()) {
        String text = words.say("lesson.because", finding.kind().label(), finding.text());
        lines.addAll(TextTable.hanging("  ", text, 2, WIDTH));
      }
    } else if (!lessons.taught()) {
      lines.addAll(TextTable.hanging("", words.say("lesson.nothing"), 0, WIDTH));
    }
    lessons.lessons().forEach(lesson -> lesson(lines, lesson));
    if (lessons.taught()) {
      lines.addAll(TextTable.hanging("", words.say("lesson.note"), 0, WIDTH));
    }
    return Quantities.plain(String.join(System.lineSeparator(), lines));
  }

  private void lesson(List<String> lines, RunLesson lesson) {
    lines.add(
        words.say(
            "lesson.title",
            lesson.vessel().name(),
            Quantities.words(lesson.vessel().meanPressure(), QuantityKind.PRESSURE)));
    List<List<String>> rows = new ArrayList<>();
    for (Learned learned : lesson.learned()) {
      if (learned.parameter() != Parameter.THERMOMETER_OFFSET) {
        rows.add(row(learned));
      }
    }
    lines.addAll(TextTable.of(rows));
    statements(lesson).forEach(text -> lines.addAll(TextTable.hanging("  ", text, 2, WIDTH)));
    lines.add("");
  }

  private List<String> row(Learned learned) {
    String name = "  " + name(learned.parameter());
    String best = figure(learned.best());
    return learned.isHeld()
        ? List.of(name, words.say("lesson.held", best), "")
        : List.of(
            name,
            words.say(
                "lesson.value",
                best,
                figure(learned.low()),
                figure(learned.high()),
                words.say("lesson.unit." + learned.parameter().label())),
            words.say("lesson.before", figure(learned.prior().best())));
  }

  /** What these data cannot tell, in plain words. */
  private List<String> statements(RunLesson lesson) {
    List<String> texts = new ArrayList<>();
    for (Learned learned : lesson.learned()) {
      if (learned.isMostlyPrior() && learned.parameter() != Parameter.THERMOMETER_OFFSET) {
        texts.add(words.say("lesson.mostly-before", name(learned.parameter())));
      }
    }
    for (RunLesson.Pair pair : lesson.indistinct()) {
      texts.add(
          words.say(
              "lesson.not-told-apart",
              name(pair.first()),
              name(pair.second()),
              Figures.decimals(pair.correlation(), 2)));
    }
    if (lesson.together() > HANG_TOGETHER) {
      texts.add(words.say("lesson.hang-together", Figures.decimals(lesson.together(), 2)));
    }
    texts.add(words.say("lesson.misfit", Figures.significant(lesson.noise(), 2)));
    return texts;
  }

  /** Three digits; large numbers with a power of ten. */
  private static String figure(double value) {
    if (value < LARGE) {
      return Figures.significant(value, 3);
    }
    int power = (int) Math.floor(Math.log10(value));
    return Figures.decimals(value / Math.pow(10, power), 2) + "e" + power;
  }

  private String name(Parameter parameter) {
    return words.say("lesson.parameter." + parameter.label());
  }
}
