package org.firnline.app.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;
import org.firnline.units.QuantityKind;
import org.firnline.units.Unit;
import tools.jackson.databind.JsonNode;

/**
 * The inputs of one case in SI, read from its {@code si} block where there is one and else from the
 * texts with units of its {@code given} block.
 */
final class CaseInputs {

  /** The word for a perfect conductor or contact, with or without its unit. */
  private static final Pattern INFINITE = Pattern.compile("(?i)\\s*(inf|infinity|∞)(\\s.*)?");

  private final Optional<JsonNode> si;
  private final Optional<JsonNode> given;

  CaseInputs(Optional<JsonNode> si, Optional<JsonNode> given) {
    this.si = si;
    this.given = given;
  }

  boolean has(String key) {
    return find(key).isPresent();
  }

  /**
   * The number under {@code key}, SI.
   *
   * @throws CaseRefusal if it is missing, no number or in a wrong unit
   */
  double number(String key) {
    return find(key)
        .map(node -> toSi(key, node))
        .orElseThrow(
            () -> new CaseRefusal("'" + key + "' is missing", "give it in 'given' or 'si'"));
  }

  double number(String key, double otherwise) {
    return has(key) ? number(key) : otherwise;
  }

  Optional<Double> optional(String key) {
    return has(key) ? Optional.of(number(key)) : Optional.empty();
  }

  /** The list of numbers under {@code key}, SI; a single number counts as a list of one. */
  List<Double> numbers(String key) {
    JsonNode node = required(key);
    if (!node.isArray()) {
      return List.of(toSi(key, node));
    }
    return elements(node).map(element -> toSi(key, element)).toList();
  }

  /**
   * The list of lists under {@code key}, SI.
   *
   * @param columns values in each row
   * @throws CaseRefusal if there is no row, or one of another length
   */
  List<List<Double>> rows(String key, int columns) {
    List<List<Double>> rows = new ArrayList<>();
    elements(required(key))
        .forEach(row -> rows.add(elements(row).map(cell -> toSi(key, cell)).toList()));
    boolean complete = rows.stream().allMatch(row -> row.size() == columns);
    if (rows.isEmpty() || !complete) {
      throw new CaseRefusal(
          "'" + key + "' needs rows of " + columns + " values", "give at least one such row");
    }
    return rows;
  }

  private JsonNode required(String key) {
    return find(key)
        .orElseThrow(
            () -> new CaseRefusal("'" + key + "' is missing", "give it in 'given' or 'si'"));
  }

  private Optional<JsonNode> find(String key) {
    return Stream.of(si, given)
        .flatMap(Optional::stream)
        .flatMap(block -> block.optional(key).stream())
        .filter(node -> !node.isNull())
        .findFirst();
  }

  private static Stream<JsonNode> elements(JsonNode array) {
    return array.isArray() ? array.valueStream() : Stream.of(array);
  }

  private static double toSi(String key, JsonNode node) {
    double value = node.isNumber() ? node.doubleValue() : withUnit(key, node);
    boolean frozenDead =
        CaseKeys.kindOf(key).filter(QuantityKind.TEMPERATURE::equals).isPresent() && value <= 0;
    if (Double.isNaN(value) || frozenDead) {
      throw new CaseRefusal(
          "'" + key + "' of " + value + (frozenDead ? " K" : "") + " cannot be",
          frozenDead
              ? "give kelvin, or a text with its unit such as \"-32 °C\""
              : "give a number or a text with its unit");
    }
    return value;
  }

  private static double withUnit(String key, JsonNode node) {
    String text = node.asString("");
    if (INFINITE.matcher(text).matches()) {
      return Double.POSITIVE_INFINITY;
    }
    try {
      return CaseKeys.kindOf(key)
          .map(kind -> Quantity.parse(text, kind).si())
          .orElseGet(() -> withAnyUnit(text));
    } catch (QuantityFormatException e) {
      throw new CaseRefusal("'" + key + "': " + e.getMessage(), e.advice());
    }
  }

  /** A key that no table names: the unit alone says how it becomes SI. */
  private static double withAnyUnit(String text) {
    String[] parts = text.strip().split("\\s+", 2);
    String unit = parts.length == 2 ? parts[1] : "1";
    double value = Quantity.parse(parts[0], QuantityKind.NUMBER).si();
    return Unit.parse(unit).toSi(value);
  }
}
