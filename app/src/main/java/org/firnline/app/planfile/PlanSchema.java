package org.firnline.app.planfile;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The plan file as a JSON Schema (draft 2020-12), made from the keys that the reader knows: for
 * editors that complete and check while one types. The reader itself says more: units, ranges, and
 * what does not go together.
 */
public final class PlanSchema {
  private static final String NUMBER = "^[+\\-−]?[0-9].*$";

  private PlanSchema() {}

  /** The whole schema. */
  public static ObjectNode schema() {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", "Firnline plan file");
    section(schema, "");
    required(schema, "vessel", "count");
    return schema;
  }

  private static void section(ObjectNode schema, String path) {
    schema.put("type", "object");
    schema.put("additionalProperties", false);
    ObjectNode properties = schema.putObject("properties");
    for (PlanKey key : PlanKeys.directlyIn(path)) {
      describe(properties.putObject(key.name()), key);
    }
  }

  private static void describe(ObjectNode node, PlanKey key) {
    switch (key.type()) {
      case SECTION -> section(node, key.path());
      case ITEMS -> items(node);
      case CHOICE -> choices(node, key.choices());
      case FLAG -> flag(node);
      case COUNT -> count(node);
      case RANGE -> range(node);
      case TIME -> text(node, "^[0-9]{4}-[0-9]{2}-[0-9]{2}[T ][0-9]{2}:[0-9]{2}(:[0-9]{2})?$");
      case TEXT -> node.putArray("type").add("string").add("number");
      case QUANTITY, ESTIMATE -> quantity(node);
    }
    if (key.type() != PlanKey.Type.SECTION && key.type() != PlanKey.Type.ITEMS) {
      node.put("description", description(key));
    }
  }

  private static void items(ObjectNode node) {
    node.put("type", "array");
    node.put("description", "Further items that dry together with the first.");
    ObjectNode item = node.putObject("items");
    item.put("type", "object");
    item.put("additionalProperties", false);
    ObjectNode properties = item.putObject("properties");
    PlanKeys.directlyIn("").stream()
        .filter(key -> PlanKeys.ITEM.contains(key.name()))
        .forEach(key -> describe(properties.putObject(key.name()), key));
    required(item, "vessel", "count");
  }

  private static void required(ObjectNode node, String... keys) {
    ArrayNode required = node.putArray("required");
    for (String key : keys) {
      required.add(key);
    }
  }

  private static void choices(ObjectNode node, List<String> choices) {
    ArrayNode allowed = node.putArray("enum");
    choices.forEach(allowed::add);
  }

  private static void flag(ObjectNode node) {
    ArrayNode allowed = node.putArray("enum");
    allowed.add(true).add(false).add("yes").add("no");
  }

  private static void count(ObjectNode node) {
    node.putArray("type").add("integer").add("string");
    node.put("minimum", 1);
    node.put("pattern", "^[1-9][0-9]*$");
  }

  private static void text(ObjectNode node, String pattern) {
    node.put("type", "string");
    node.put("pattern", pattern);
  }

  private static void quantity(ObjectNode node) {
    node.putArray("type").add("string").add("number");
    node.put("pattern", NUMBER);
  }

  private static void range(ObjectNode node) {
    node.putArray("type").add("string").add("array");
    node.put("minItems", 2);
    node.put("maxItems", 2);
  }

  /** What is measured, an example, and what is taken when it is left out. */
  private static String description(PlanKey key) {
    StringBuilder text = new StringBuilder();
    switch (key.type()) {
      case QUANTITY -> text.append(measured(key)).append('.');
      case ESTIMATE ->
          text.append(measured(key)).append("; doubt (one standard deviation) after +-.");
      case RANGE -> text.append("Two values: ").append(measured(key)).append("; or none.");
      case FLAG -> text.append("yes or no.");
      case COUNT -> text.append("A whole number from 1.");
      case TIME -> text.append("Date and time, such as 2026-11-26T16:30.");
      default -> text.append("Words.");
    }
    Optional<Assumption> filled = PlanDefaults.of(key.path());
    filled.ifPresent(
        value ->
            text.append(" Left out: ")
                .append(value.text())
                .append(" (")
                .append(value.provenance().label())
                .append(")."));
    return text.toString();
  }

  private static String measured(PlanKey key) {
    return key.kind().label() + ", such as " + key.kind().example();
  }
}
