package org.firnline.app.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.firnline.app.words.Words;
import org.firnline.evidence.InvalidInputException;
import org.firnline.planning.Verdict;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Each question is answered from few values, in words that exist, with one picture. */
class AskTopicsTest {
  private final AskWords words = new AskWords(Words.in(Locale.ENGLISH));

  static Stream<AskTopic> topics() {
    return AskTopics.all().stream();
  }

  private static AskAnswer ask(String topic, Map<String, String> typed) {
    AskTopic asked = AskTopics.find(topic).orElseThrow();
    AskValues values = AskValues.read(asked, typed);
    assertThat(values.problems()).isEmpty();
    return asked.answer(values);
  }

  private static double best(AskAnswer answer, String name) {
    return answer.figures().stream()
        .filter(figure -> figure.name().equals(name))
        .findFirst()
        .orElseThrow()
        .value()
        .best();
  }

  @ParameterizedTest
  @MethodSource("topics")
  void everyQuestionAsksForFourToSixValuesThatSayWhereTheyComeFrom(AskTopic topic) {
    String vessel = AskValues.vessel(topic, Map.of());
    assertThat(topic.inputs().stream().filter(input -> input.asksWith(vessel)).count())
        .isBetween(4L, 6L);
    for (AskInput input : topic.inputs()) {
      assertThat(words.label(input)).isNotBlank();
      assertThat(words.origin(topic, input)).isNotBlank();
      input.choices().forEach(choice -> assertThat(words.choice(input, choice)).isNotBlank());
    }
  }

  @ParameterizedTest
  @MethodSource("topics")
  void everyQuestionIsAnsweredWithNothingTyped(AskTopic topic) {
    AskAnswer answer = topic.answer(AskValues.read(topic, Map.of()));
    assertThat(answer.figures()).isNotEmpty();
    answer.figures().forEach(figure -> assertThat(words.name(topic, figure)).isNotBlank());
    assertThat(words.advice(topic, answer)).endsWith(".").doesNotContain("{");
    assertThat(words.caution(topic)).contains("not a safety assessment");
    assertThat(words.svg(answer)).startsWith("<svg").contains("<title>").doesNotContain("style=");
  }

  /** Every way an answer can end has its sentence. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "layer | fill=100 mL | PASS",
        "layer | fill=300 mL | WATCH",
        "layer | flask=5 L; fill=2200 mL | STOP",
        "layer | vessel=vial; fill=3 mL | PASS",
        "layer | vessel=vial; fill=5 mL | WATCH",
        "layer | vessel=vial; fill=9 mL; size=10R | STOP",
        "layer | vessel=tray; tilt=1 mm | PASS",
        "layer | vessel=tray; tilt=4 mm | WATCH",
        "layer | vessel=tray; tilt=40 mm | STOP",
        "time | critical=-5 degC | PASS",
        "time | critical=-22 degC | WATCH",
        "time | critical=-40 degC | STOP",
        "time | vessel=flask-puddle; critical=-1 degC | PASS",
        "time | vessel=vial; warm=-60 degC | STOP",
        "time | vessel=tray; pressure=7 mbar | STOP",
        "pressure | pressure=6 Pa | PASS",
        "pressure | collector=-47 degC; pressure=6 Pa | WATCH",
        "pressure | pressure=15 Pa | WATCH",
        "pressure | pressure=1 Pa | WATCH",
        "pressure | collector=-40 degC | STOP",
        "pressure | pressure=80 Pa | STOP",
        "collector | count=120 | PASS",
        "collector | count=1200; hours=90 h | WATCH",
        "collector | count=2000; hours=90 h | STOP",
        "collector | count=300 | WATCH",
        "collector | count=600 | STOP",
        "failure | vessel=flask-puddle; fill=400 mL; now=-60 degC; warm=0 degC | PASS",
        "failure | fill=200 mL | WATCH",
        "failure | now=-30 degC | STOP",
        "failure | vessel=vial; warm=-40 degC | PASS"
      })
  void everyEndHasItsSentence(String key, String typed, Verdict verdict) {
    Map<String, String> answers = new java.util.HashMap<>();
    for (String pair : typed.split("; ")) {
      answers.put(pair.split("=")[0], pair.split("=")[1]);
    }
    AskTopic topic = AskTopics.find(key).orElseThrow();
    AskAnswer answer = ask(key, answers);
    assertThat(answer.verdict()).as(words.advice(topic, answer)).isEqualTo(verdict);
    assertThat(words.advice(topic, answer)).endsWith(".");
    assertThat(words.svg(answer)).endsWith("</svg>");
  }

  @Nested
  class Figures {

    /**
     * By hand: 3 mL of 1.02 g/mL with 5 % solids hold 2.907 g of ice, 3.17 mL at 0.917 g/mL, and
     * 0.153 g of solids, 0.10 mL at about 1.5 g/mL; over an inner diameter of 22 mm that is 8.6 mm.
     */
    @Test
    void aVialsLayerIsItsFrozenVolumeOverItsArea() {
      double byHand = (2.907e-6 / 0.917 + 0.153e-6 / 1.5) / (Math.PI / 4 * 0.022 * 0.022);
      assertThat(best(ask("layer", Map.of("vessel", "vial", "fill", "3 mL")), "depth"))
          .isCloseTo(byHand, within(0.02 * byHand));
    }

    /** By hand: 120 vials of 3 mL at 1.02 g/mL with 5 % solids hold 348.8 g of water. */
    @Test
    void theWaterIsThatOfTheLoad() {
      assertThat(best(ask("collector", Map.of("count", "120")), "water"))
          .isCloseTo(0.34884, within(1e-5));
    }

    @Test
    void thePressureIsReadInAnyUnit() {
      assertThat(best(ask("pressure", Map.of("pressure", "45 mTorr")), "coldestDrying"))
          .isCloseTo(
              best(ask("pressure", Map.of("pressure", "6 Pa")), "coldestDrying"), within(0.01));
    }

    @Test
    void aBareNumberTakesTheUnitOfItsField() {
      assertThat(best(ask("collector", Map.of("fill", "2", "hours", "12")), "water"))
          .isEqualTo(best(ask("collector", Map.of("fill", "2 mL")), "water"));
    }
  }

  @Nested
  class Refusals {

    @Test
    void standBesideTheValue() {
      AskTopic topic = AskTopics.find("layer").orElseThrow();
      Map<String, String> typed = Map.of("fill", "3 bananas", "vessel", "bucket");
      assertThat(AskValues.read(topic, typed).problems()).containsOnlyKeys("fill", "vessel");
    }

    @Test
    void sayWhatWouldBeRight() {
      assertThatThrownBy(() -> ask("collector", Map.of("count", "1.5")))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> ask("layer", Map.of("fill", "900 mL")))
          .isInstanceOf(InvalidInputException.class);
    }
  }
}
