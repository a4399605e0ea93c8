package org.firnline.app.ask;

import java.util.Map;
import org.firnline.units.QuantityKind;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A question and its answer for programs: SI numbers under keys that end in their unit. */
public final class AskJson {
  private final AskWords words;

  public AskJson(AskWords words) {
    this.words = words;
  }

  /** The answer with the values it rests on. */
  public ObjectNode answer(AskTopic topic, AskValues values, AskAnswer answer) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("ask", topic.key());
    ObjectNode inputs = json.putObject("inputs");
    for (AskInput input : topic.inputs()) {
      if (values.numbers().containsKey(input.key())) {
        inputs.put(
            input.key() + suffix(input.kind()), values.numbers().getOrDefault(input.key(), 0.0));
      } else if (values.texts().containsKey(input.key())) {
        inputs.put(input.key(), values.text(input.key()));
      }
    }
    ObjectNode numbers = json.putObject("answer");
    for (AskFigure figure : answer.figures()) {
      ObjectNode band = numbers.putObject(figure.name() + suffix(figure.kind()));
      number(band, "low", figure.value().low());
      number(band, "best", figure.value().best());
      number(band, "high", figure.value().high());
    }
    json.put("verdict", Drawing.style(answer.verdict()));
    json.put("advice", words.advice(topic, answer));
    json.put("caution", words.caution(topic));
    return json;
  }

  /** What is wrong with what was given. */
  public static ObjectNode problems(Map<String, String> problems) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ObjectNode entries = json.putObject("problems");
    problems.forEach(entries::put);
    return json;
  }

  private static void number(ObjectNode json, String key, double value) {
    if (Double.isInfinite(value)) {
      json.put(key, value > 0 ? "inf" : "-inf");
    } else {
      json.put(key, value);
    }
  }

  private static String suffix(QuantityKind kind) {
    return switch (kind) {
      case FRACTION, NUMBER -> "_fraction";
      case MASS_FLOW -> "_kg_per_s";
      default -> "_" + kind.siUnit();
    };
  }
}
