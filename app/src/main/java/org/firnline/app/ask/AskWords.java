package org.firnline.app.ask;

import java.util.List;
import java.util.Locale;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Words;
import org.firnline.planning.Verdict;

/** Says questions and answers in one language; pages and commands share it. */
public final class AskWords {
  private final Words words;

  public AskWords(Words words) {
    this.words = words;
  }

  /** What is asked, as a title. */
  public String title(AskTopic topic) {
    return words.say("ask." + topic.key() + ".title");
  }

  /** What is asked, as a sentence. */
  public String lead(AskTopic topic) {
    return words.say("ask." + topic.key() + ".lead");
  }

  /** What a value is called. */
  public String label(AskInput input) {
    return words.say("ask.input." + input.key());
  }

  /** Where its standard comes from. */
  public String origin(AskTopic topic, AskInput input) {
    String own = "ask." + topic.key() + ".origin." + input.key();
    return words.say(words.has(own) ? own : "ask.origin." + input.key());
  }

  /** What a choice is called. */
  public String choice(AskInput input, String choice) {
    String key = "ask.choice." + input.key() + "." + choice;
    return words.has(key) ? words.say(key) : choice;
  }

  /** The one sentence of advice. */
  public String advice(AskTopic topic, AskAnswer answer) {
    return words.say(
        "ask." + topic.key() + ".advice." + answer.advice(), answer.places().toArray());
  }

  /** What a number is called. */
  public String name(AskTopic topic, AskFigure figure) {
    return words.say("ask." + topic.key() + ".figure." + figure.name());
  }

  /** Its best value. */
  public String value(AskFigure figure) {
    return spoken(figure.value().best(), figure);
  }

  /** Its band in words, empty where nothing is uncertain. */
  public String between(AskFigure figure) {
    return figure.isBand()
        ? words.say(
            "ask.between",
            spoken(figure.value().low(), figure),
            spoken(figure.value().high(), figure))
        : "";
  }

  /** The usual caution beside this answer. */
  public String caution(AskTopic topic) {
    return words.say("ask." + topic.key() + ".caution");
  }

  /** What the picture shows, for those who do not see it. */
  public String picture(AskTopic topic) {
    return words.say("ask." + topic.key() + ".picture");
  }

  /** "pass", "watch" or "stop". */
  public String verdict(Verdict verdict) {
    return words.say("state." + verdict.name().toLowerCase(Locale.ROOT));
  }

  /** The picture as SVG. */
  public String svg(AskAnswer answer) {
    return answer.picture().svg(words);
  }

  /** Every line of the answer for a terminal. */
  List<String> lines(AskTopic topic, AskAnswer answer) {
    return answer.figures().stream()
        .map(figure -> name(topic, figure) + " " + value(figure) + " " + between(figure))
        .toList();
  }

  private String spoken(double si, AskFigure figure) {
    return Double.isFinite(si) ? Quantities.words(si, figure.kind()) : words.say("ask.never");
  }
}
