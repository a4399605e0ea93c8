package org.firnline.app.ask;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;

/**
 * What was typed for a question, understood.
 *
 * @param texts the text in use for every value asked for, typed or standard
 * @param numbers SI values of the quantities
 * @param problems what is wrong, by key
 */
public record AskValues(
    Map<String, String> texts, Map<String, Double> numbers, Map<String, String> problems) {
  private static final int LONGEST = 80;

  public AskValues {
    texts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    numbers = Map.copyOf(numbers);
    problems = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(problems));
  }

  /** Reads what was typed; blank or missing values become their standards. */
  public static AskValues read(AskTopic topic, Map<String, String> typed) {
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, Double> numbers = new LinkedHashMap<>();
    Map<String, String> problems = new LinkedHashMap<>();
    String vessel = vessel(topic, typed);
    for (AskInput input : topic.inputs()) {
      if (input.asksWith(vessel)) {
        String text = typed(input, typed).orElseGet(() -> input.standard(vessel));
        texts.put(input.key(), text);
        if (input.choices().isEmpty()) {
          quantity(input, text, numbers, problems);
        } else if (!input.choices().contains(text)) {
          problems.put(
              input.key(), "is not known; use one of " + String.join(", ", input.choices()));
        }
      }
    }
    return new AskValues(texts, numbers, problems);
  }

  /** The vessel in use; empty for questions without one. */
  public static String vessel(AskTopic topic, Map<String, String> typed) {
    return topic.inputs().stream()
        .filter(input -> input.key().equals("vessel"))
        .findFirst()
        .map(input -> typed(input, typed).orElseGet(() -> input.standard("")))
        .orElse("");
  }

  static Optional<String> typed(AskInput input, Map<String, String> typed) {
    return Optional.ofNullable(typed.get(input.key()))
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .map(text -> text.substring(0, Math.min(LONGEST, text.length())));
  }

  private static void quantity(
      AskInput input, String text, Map<String, Double> numbers, Map<String, String> problems) {
    boolean bare = !input.unit().isEmpty() && text.matches("[+\\-−]?[0-9][0-9.,]*");
    try {
      double si = Quantity.parse(bare ? text + " " + input.unit() : text, input.kind()).si();
      numbers.put(input.key(), si);
    } catch (QuantityFormatException e) {
      problems.put(input.key(), e.getMessage() + "; " + e.advice());
    }
  }

  double number(String key) {
    return Optional.ofNullable(numbers.get(key))
        .orElseThrow(() -> new IllegalStateException(key + " was not asked for"));
  }

  String text(String key) {
    return texts.getOrDefault(key, "");
  }
}
