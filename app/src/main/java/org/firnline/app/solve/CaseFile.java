package org.firnline.app.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A file of fully specified cases: each says its kind and every input, in SI or with units, and
 * optionally which answers are wanted. A case that cannot be answered says why; the rest are
 * solved.
 */
public final class CaseFile {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final List<JsonNode> cases;

  private CaseFile(List<JsonNode> cases) {
    this.cases = cases;
  }

  /**
   * Reads a case file: an object with a list {@code cases}, a plain list, or one case.
   *
   * @param name of the file, for messages
   * @throws InvalidInputException if the text is no JSON or holds no cases
   */
  public static CaseFile parse(String name, String text) {
    JsonNode root;
    try {
      root = JSON.readTree(text);
    } catch (JacksonException e) {
      throw new InvalidInputException(
          new Problem(
              "not-json",
              "the text",
              name + " line " + e.getLocation().getLineNr(),
              "is not JSON: " + e.getOriginalMessage(),
              "check brackets, commas and quotes"));
    }
    JsonNode list = root.optional("cases").orElse(root);
    if (list.isArray()) {
      return new CaseFile(list.valueStream().toList());
    }
    if (list.isObject() && list.has("kind")) {
      return new CaseFile(List.of(list));
    }
    throw new InvalidInputException(
        new Problem(
            "no-cases", "the file", name, "holds no cases", "give an object with a list 'cases'"));
  }

  /** The answers, in the order of the file. */
  public List<SolvedCase> solve() {
    List<SolvedCase> solved = new ArrayList<>(cases.size());
    for (int i = 0; i < cases.size(); i++) {
      solved.add(solve(cases.get(i), "case " + (i + 1)));
    }
    return solved;
  }

  private static SolvedCase solve(JsonNode node, String placeInFile) {
    String id = node.path("id").asString(placeInFile);
    String kind = node.path("kind").asString("");
    try {
      CaseKind door =
          CaseKinds.find(kind)
              .orElseThrow(
                  () ->
                      new CaseRefusal(
                          "unknown kind '" + kind + "'", "known kinds: " + CaseKinds.known()));
      CaseAnswer answer = door.solve(new CaseInputs(node.optional("si"), node.optional("given")));
      return new SolvedCase(id, kind, wanted(node, answer.values()), Optional.empty());
    } catch (CaseRefusal | IllegalArgumentException e) {
      return refused(id, kind, String.valueOf(e.getMessage()));
    } catch (RuntimeException e) {
      return refused(
          id,
          kind,
          "the numbers of this case lead nowhere ("
              + e
              + "); check its inputs, and if they are right please report the case");
    }
  }

  private static SolvedCase refused(String id, String kind, String reason) {
    return new SolvedCase(id, kind, Map.of(), Optional.of(reason));
  }

  /** The answers asked for, in their order; all if none are asked for. */
  private static Map<String, Object> wanted(JsonNode node, Map<String, Object> all) {
    List<String> keys =
        Stream.concat(
                node.path("ask").valueStream().map(key -> key.asString("")),
                node.path("expect").propertyNames().stream())
            .distinct()
            .toList();
    if (keys.isEmpty()) {
      return all;
    }
    Map<String, Object> wanted = new LinkedHashMap<>();
    for (String key : keys) {
      if (all.containsKey(key)) {
        wanted.put(key, all.get(key));
      }
    }
    return wanted;
  }
}
