package org.firnline.app.ask;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.firnline.app.ask.AskView.Answer;
import org.firnline.app.ask.AskView.Choice;
import org.firnline.app.ask.AskView.Field;
import org.firnline.app.ask.AskView.Figure;
import org.firnline.app.ask.AskView.Link;
import org.firnline.app.words.Words;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.springframework.stereotype.Component;

/** Puts the page of a question together. */
@Component
class AskViews {

  AskView of(AskTopic topic, Map<String, String> typed, Locale locale) {
    AskWords words = new AskWords(Words.in(locale));
    AskValues values = AskValues.read(topic, typed);
    String vessel = AskValues.vessel(topic, typed);
    List<Field> fields =
        topic.inputs().stream()
            .map(input -> field(topic, input, typed, values, vessel, words))
            .toList();
    List<Link> links =
        AskTopics.all().stream()
            .map(
                other -> new Link(other.key(), words.title(other), other.key().equals(topic.key())))
            .toList();
    Optional<Answer> answer = Optional.empty();
    Optional<String> refusal = Optional.empty();
    if (values.problems().isEmpty()) {
      try {
        answer = Optional.of(answer(topic, topic.answer(values), words));
      } catch (InvalidInputException e) {
        refusal = Optional.of(sentence(e.problems().get(0)));
      }
    }
    return new AskView(
        topic.key(), words.title(topic), words.lead(topic), links, fields, answer, refusal);
  }

  private static Field field(
      AskTopic topic,
      AskInput input,
      Map<String, String> typed,
      AskValues values,
      String vessel,
      AskWords words) {
    String text = AskValues.typed(input, typed).orElse("");
    String inUse = text.isEmpty() ? input.standard(vessel) : text;
    return new Field(
        input.key(),
        words.label(input),
        text,
        input.standard(vessel),
        words.origin(topic, input),
        Optional.ofNullable(values.problems().get(input.key())),
        input.choices().stream()
            .map(choice -> new Choice(choice, words.choice(input, choice), choice.equals(inUse)))
            .toList(),
        input.asksWith(vessel));
  }

  private static Answer answer(AskTopic topic, AskAnswer answer, AskWords words) {
    return new Answer(
        Drawing.style(answer.verdict()),
        words.verdict(answer.verdict()),
        answer.figures().stream()
            .map(
                figure ->
                    new Figure(
                        words.name(topic, figure), words.value(figure), words.between(figure)))
            .toList(),
        words.advice(topic, answer),
        words.svg(answer),
        words.picture(topic),
        words.caution(topic));
  }

  static String sentence(Problem problem) {
    return problem.what() + " " + problem.rule() + "; " + problem.advice();
  }
}
