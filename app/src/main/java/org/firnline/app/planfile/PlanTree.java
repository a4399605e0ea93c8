package org.firnline.app.planfile;

import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;

/**
 * YAML as a tree of text. Values are never turned into objects, so nothing in a file can make the
 * program do anything; size, depth and repetition are limited.
 */
final class PlanTree {
  private static final int LARGEST_FILE_CHARACTERS = 64 * 1024;
  private static final int DEEPEST = 8;

  private PlanTree() {}

  /**
   * Reads the tree.
   *
   * @throws org.yaml.snakeyaml.error.YAMLException if the text is no YAML
   */
  static Optional<Node> of(String text) {
    LoaderOptions limits = new LoaderOptions();
    limits.setCodePointLimit(LARGEST_FILE_CHARACTERS);
    limits.setNestingDepthLimit(DEEPEST);
    limits.setMaxAliasesForCollections(0);
    limits.setAllowDuplicateKeys(false);
    Yaml yaml =
        new Yaml(
            new SafeConstructor(limits),
            new Representer(new DumperOptions()),
            new DumperOptions(),
            limits);
    @Nullable Node root = yaml.compose(new StringReader(text));
    return Optional.ofNullable(root);
  }

  /** A scalar as written, or a list of two scalars as a range "a to b". */
  static Optional<String> textOf(Node node) {
    if (node instanceof ScalarNode scalar) {
      boolean empty = scalar.getTag().equals(Tag.NULL) || scalar.getValue().isBlank();
      return empty ? Optional.empty() : Optional.of(scalar.getValue().strip());
    }
    if (node instanceof SequenceNode list
        && list.getValue().size() == 2
        && list.getValue().get(0) instanceof ScalarNode low
        && list.getValue().get(1) instanceof ScalarNode high) {
      return Optional.of(low.getValue().strip() + " to " + high.getValue().strip());
    }
    return Optional.empty();
  }

  /** Every value of a tree under its dotted path, in the order of the file. */
  static Map<String, String> flatten(Node root) {
    Map<String, String> flat = new LinkedHashMap<>();
    flatten("", root, flat);
    return flat;
  }

  private static void flatten(String path, Node node, Map<String, String> flat) {
    if (node instanceof MappingNode mapping) {
      for (NodeTuple tuple : mapping.getValue()) {
        if (tuple.getKeyNode() instanceof ScalarNode key) {
          String below = path.isEmpty() ? key.getValue() : path + "." + key.getValue();
          flatten(below, tuple.getValueNode(), flat);
        }
      }
    } else if (path.equals(PlanKeys.ALSO)) {
      flat.put(path, "");
    } else {
      textOf(node).ifPresent(text -> flat.put(path, text));
    }
  }
}
