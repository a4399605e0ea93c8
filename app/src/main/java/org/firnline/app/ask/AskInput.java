package org.firnline.app.ask;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.units.QuantityKind;

/**
 * One value that a question asks for.
 *
 * @param key its name in the form, as an option and in JSON; the words for it stand in the bundle
 * @param kind what it measures; meaningless for a choice
 * @param unit meant when only a number is typed; empty for pure numbers
 * @param choices what may be chosen; empty for a quantity
 * @param standards the value when nothing is typed, by vessel; {@code ""} for every other vessel
 * @param onlyFor the vessels that have it; empty for all
 */
public record AskInput(
    String key,
    QuantityKind kind,
    String unit,
    List<String> choices,
    Map<String, String> standards,
    List<String> onlyFor) {

  public AskInput {
    choices = List.copyOf(choices);
    standards = Map.copyOf(standards);
    onlyFor = List.copyOf(onlyFor);
  }

  static AskInput quantity(String key, QuantityKind kind, String unit, String standard) {
    return new AskInput(key, kind, unit, List.of(), Map.of("", standard), List.of());
  }

  static AskInput choice(String key, String standard, List<String> choices) {
    return new AskInput(key, QuantityKind.NUMBER, "", choices, Map.of("", standard), List.of());
  }

  AskInput only(String... vessels) {
    return new AskInput(key, kind, unit, choices, standards, List.of(vessels));
  }

  AskInput with(String vessel, String standard) {
    Map<String, String> more = new java.util.HashMap<>(standards);
    more.put(vessel, standard);
    return new AskInput(key, kind, unit, choices, more, onlyFor);
  }

  /** Whether this value is asked for with {@code vessel}. */
  public boolean asksWith(String vessel) {
    return onlyFor.isEmpty() || onlyFor.contains(vessel);
  }

  /** What is taken when nothing is typed. */
  public String standard(String vessel) {
    return Optional.ofNullable(standards.get(vessel))
        .or(() -> Optional.ofNullable(standards.get("")))
        .orElseThrow(() -> new IllegalStateException(key + " has no standard value"));
  }
}
