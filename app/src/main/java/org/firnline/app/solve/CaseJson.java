package org.firnline.app.solve;

import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes answers as {@code {"cases":[{"id":…,"answer":{…}}]}}; a refused case says why. */
public final class CaseJson {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private CaseJson() {}

  public static String write(List<SolvedCase> solved) {
    ObjectNode root = JSON.createObjectNode();
    ArrayNode cases = root.putArray("cases");
    for (SolvedCase one : solved) {
      ObjectNode node = cases.addObject().put("id", one.id()).put("kind", one.kind());
      ObjectNode answer = node.putObject("answer");
      one.refusal()
          .ifPresentOrElse(
              reason -> {
                node.put("refused", reason);
                answer.put("status", "refused").put("reason", reason);
              },
              () -> fill(answer, one.answer()));
    }
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root);
  }

  private static void fill(ObjectNode answer, Map<String, Object> values) {
    values.forEach(
        (key, value) -> {
          if (value == CaseAnswer.Undefined.VALUE) {
            answer.putNull(key);
          } else if (value instanceof List<?> list) {
            ArrayNode elements = answer.putArray(key);
            list.forEach(
                element ->
                    elements.add(
                        element == CaseAnswer.Undefined.VALUE
                            ? JSON.nullNode()
                            : JSON.valueToTree(element)));
          } else {
            answer.set(key, JSON.valueToTree(value));
          }
        });
  }
}
