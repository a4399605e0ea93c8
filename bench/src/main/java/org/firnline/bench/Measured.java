package org.firnline.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * One benchmark method as measured.
 *
 * @param type full name of its class
 * @param method its name
 * @param perSecond calls per second
 * @param doubt half width of the 99.9 % interval of {@code perSecond}
 */
record Measured(String type, String method, double perSecond, double doubt) {

  /** Reads what JMH wrote in its JSON form; JSON is read as the YAML it is. */
  static List<Measured> readAll(Path json) throws IOException {
    List<Map<String, Object>> results =
        new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(json));
    return results.stream().map(Measured::of).toList();
  }

  private static Measured of(Map<String, Object> result) {
    String name = String.valueOf(result.get("benchmark"));
    int dot = name.lastIndexOf('.');
    Map<?, ?> metric = (Map<?, ?>) result.get("primaryMetric");
    String unit = String.valueOf(metric.get("scoreUnit"));
    if (!unit.equals("ops/s")) {
      throw new IllegalArgumentException(name + " is measured in " + unit + ", not in ops/s");
    }
    return new Measured(
        name.substring(0, dot),
        name.substring(dot + 1),
        number(metric.get("score")),
        number(metric.get("scoreError")));
  }

  /** JMH writes "NaN" as text where one sample allows no interval. */
  private static double number(Object value) {
    return Double.parseDouble(String.valueOf(value));
  }
}
