package org.firnline.app.planfile;

import java.util.LinkedHashMap;
import java.util.Map;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.YAMLException;

/** Between the text of a plan file and a flat list of typed values, one per dotted path. */
public final class PlanText {
  private PlanText() {}

  /** Writes a plan file from typed values, in their order. */
  public static String write(Map<String, String> typed) {
    Map<String, Object> tree = new LinkedHashMap<>();
    typed.forEach((path, text) -> put(tree, path, text));
    DumperOptions options = new DumperOptions();
    options.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
    options.setAllowUnicode(true);
    options.setSplitLines(false);
    options.setWidth(Integer.MAX_VALUE);
    return new Yaml(options).dump(tree);
  }

  /** The values of a plan file by dotted path; empty when it is no YAML. */
  public static Map<String, String> flatten(String text) {
    try {
      return PlanTree.of(text).map(PlanTree::flatten).orElseGet(Map::of);
    } catch (YAMLException e) {
      return Map.of();
    }
  }

  private static void put(Map<String, Object> tree, String path, String text) {
    int dot = path.indexOf('.');
    if (dot < 0) {
      tree.put(path, text.matches("[1-9][0-9]{0,8}") ? Integer.valueOf(text) : text);
      return;
    }
    Object below = tree.computeIfAbsent(path.substring(0, dot), key -> new LinkedHashMap<>());
    if (below instanceof Map<?, ?>) {
      @SuppressWarnings("unchecked")
      Map<String, Object> section = (Map<String, Object>) below;
      put(section, path.substring(dot + 1), text);
    }
  }
}
