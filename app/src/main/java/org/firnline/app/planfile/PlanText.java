package org.firnline.app.planfile;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.YAMLException;

/** Between the text of a plan file and a flat list of typed values, one per dotted path. */
public final class PlanText {
  private PlanText() {}

  /** Writes a plan file from typed values, in their order. */
  public static String write(Map<String, String> typed) {
    Map<String, Object> tree = new LinkedHashMap<>();
    typed.forEach((path, text) -> put(tree, path, path.equals(PlanKeys.ALSO) ? list(text) : text));
    return dump(tree);
  }

  /** The values of a plan file by dotted path; empty when it is no YAML. */
  public static Map<String, String> flatten(String text) {
    try {
      Map<String, String> flat = PlanTree.of(text).map(PlanTree::flatten).orElseGet(Map::of);
      return flat.containsKey(PlanKeys.ALSO) ? withList(flat, text) : flat;
    } catch (YAMLException e) {
      return Map.of();
    }
  }

  private static Map<String, String> withList(Map<String, String> flat, String text) {
    Map<String, String> whole = new LinkedHashMap<>(flat);
    @Nullable Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
    if (tree instanceof Map<?, ?> keys && keys.get(PlanKeys.ALSO) != null) {
      whole.put(PlanKeys.ALSO, dump(keys.get(PlanKeys.ALSO)));
    }
    return whole;
  }

  private static String dump(@Nullable Object value) {
    DumperOptions options = new DumperOptions();
    options.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
    options.setAllowUnicode(true);
    options.setSplitLines(false);
    options.setWidth(Integer.MAX_VALUE);
    return new Yaml(options).dump(value);
  }

  /** Further items are typed as YAML; text that is none stays text, and the reader says so. */
  private static Object list(String text) {
    try {
      @Nullable Object read = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
      return read == null ? text : read;
    } catch (YAMLException e) {
      return text;
    }
  }

  private static void put(Map<String, Object> tree, String path, Object value) {
    int dot = path.indexOf('.');
    if (dot < 0) {
      boolean count = value instanceof String text && text.matches("[1-9][0-9]{0,8}");
      tree.put(path, count ? Integer.valueOf((String) value) : value);
      return;
    }
    Object below = tree.computeIfAbsent(path.substring(0, dot), key -> new LinkedHashMap<>());
    if (below instanceof Map<?, ?>) {
      @SuppressWarnings("unchecked")
      Map<String, Object> section = (Map<String, Object>) below;
      put(section, path.substring(dot + 1), value);
    }
  }
}
