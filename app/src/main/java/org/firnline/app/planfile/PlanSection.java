package org.firnline.app.planfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.evidence.Provenance;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * One mapping of a plan file: its values as text with their places, and which keys may stand in it.
 */
final class PlanSection {
  /** Where a value was found, or that it was filled in. */
  record Entry(String path, String text, Optional<Node> node, Provenance provenance) {}

  private final String path;
  private final PlanProblems problems;
  private final List<Assumption> assumptions;
  private final Map<String, Node> values;
  private final String variant;

  PlanSection(
      String path,
      Optional<Node> node,
      List<String> known,
      PlanProblems problems,
      List<Assumption> assumptions) {
    this(path, problems, assumptions, new LinkedHashMap<>(), "");
    node.ifPresent(present -> read(present, known));
  }

  private PlanSection(
      String path,
      PlanProblems problems,
      List<Assumption> assumptions,
      Map<String, Node> values,
      String variant) {
    this.path = path;
    this.problems = problems;
    this.assumptions = assumptions;
    this.values = values;
    this.variant = variant;
  }

  /** This section, with the defaults of a kind of vessel. */
  PlanSection of(String kind) {
    return new PlanSection(path, problems, assumptions, values, kind);
  }

  private void read(Node node, List<String> known) {
    if (!(node instanceof MappingNode mapping)) {
      String advice = "put these under it, indented: " + String.join(", ", known);
      problems.at(node, path, "not-a-section", path, "must hold keys of its own", advice);
      return;
    }
    for (NodeTuple tuple : mapping.getValue()) {
      String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
      if (values.containsKey(key)) {
        problems.at(
            tuple.getKeyNode(),
            pathOf(key),
            "key-twice",
            "key '" + key + "'",
            "stands here for the second time",
            "keep one of the two");
      } else if (known.contains(key)) {
        values.put(key, tuple.getValueNode());
      } else {
        String advice =
            NearestKey.among(known, key)
                .map(near -> "did you mean '" + near + "'?")
                .orElse("known here: " + String.join(", ", known));
        problems.at(
            tuple.getKeyNode(),
            pathOf(key),
            "unknown-key",
            "key '" + key + "'",
            "is not known",
            advice);
      }
    }
  }

  boolean has(String key) {
    return values.containsKey(key);
  }

  PlanSection section(String key, List<String> known) {
    return new PlanSection(
            pathOf(key), Optional.ofNullable(values.get(key)), known, problems, assumptions)
        .of(variant);
  }

  /** The sections of a list; something else than a list is a problem. */
  List<PlanSection> list(String key, List<String> known) {
    Node node = values.get(key);
    if (node == null) {
      return List.of();
    }
    if (!(node instanceof SequenceNode sequence)) {
      problems.at(
          node,
          pathOf(key),
          "not-a-list",
          pathOf(key),
          "must be a list",
          "start every entry with a dash");
      return List.of();
    }
    List<PlanSection> sections = new ArrayList<>();
    for (Node entry : sequence.getValue()) {
      String place = pathOf(key) + "[" + (sections.size() + 1) + "]";
      sections.add(new PlanSection(place, Optional.of(entry), known, problems, assumptions));
    }
    return sections;
  }

  /** Notes a value that was worked out because the file leaves it out. */
  void assume(String key, String text, Provenance provenance) {
    assumptions.add(new Assumption(pathOf(key), text, provenance));
  }

  /** Refuses keys that belong to another kind of vessel. */
  void onlyFor(String kind, List<String> allowed) {
    for (String key : values.keySet()) {
      if (!allowed.contains(key)) {
        blame(
            key,
            new Problem(
                "not-for-kind",
                "key '" + key + "'",
                "",
                "means nothing for a " + kind,
                "known for it: " + String.join(", ", allowed)));
      }
    }
  }

  /** The text under a key, or its default; a missing key without default is a problem. */
  Optional<Entry> entry(String key) {
    Node node = values.get(key);
    if (node != null) {
      return written(key, node);
    }
    Optional<Assumption> filled = PlanDefaults.of(pathOf(key), variant);
    filled.ifPresentOrElse(
        assumptions::add, () -> problems.missing(pathOf(key), "add '" + key + "'"));
    return filled.map(
        value -> new Entry(value.path(), value.text(), Optional.empty(), value.provenance()));
  }

  /** The text under a key that may be left out. */
  Optional<Entry> optionalEntry(String key) {
    Node node = values.get(key);
    return node == null ? Optional.empty() : written(key, node);
  }

  private Optional<Entry> written(String key, Node node) {
    Optional<String> text = PlanTree.textOf(node);
    if (text.isEmpty()) {
      boolean list = node instanceof SequenceNode;
      problems.at(
          node,
          pathOf(key),
          "not-a-value",
          pathOf(key),
          list ? "must be one value or a range of two" : "must be a value",
          "write it on one line");
      return Optional.empty();
    }
    int line = node.getStartMark().getLine() + 1;
    Provenance stated = new Provenance.Stated("plan line " + line);
    return Optional.of(new Entry(pathOf(key), text.get(), Optional.of(node), stated));
  }

  /**
   * Puts a problem beside a key, quoted as it was typed, or beside the section when the key was
   * left out.
   */
  void blame(String key, Problem problem) {
    Node node = values.get(key);
    if (node == null) {
      problems.at(0, 0, pathOf(key), problem);
    } else {
      problems.at(
          node.getStartMark().getLine() + 1,
          node.getStartMark().getColumn() + 1,
          pathOf(key),
          asTyped(key, node, problem));
    }
  }

  private Problem asTyped(String key, Node node, Problem problem) {
    return PlanTree.textOf(node)
        .map(
            text ->
                new Problem(
                    problem.code(),
                    pathOf(key) + " '" + text + "'",
                    problem.where(),
                    problem.rule(),
                    problem.advice()))
        .orElse(problem);
  }

  void blame(Entry entry, String code, String rule, String advice) {
    Problem problem = new Problem(code, entry.path() + " '" + entry.text() + "'", "", rule, advice);
    String key = entry.path().substring(path.isEmpty() ? 0 : path.length() + 1);
    blame(key, problem);
  }

  private String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
