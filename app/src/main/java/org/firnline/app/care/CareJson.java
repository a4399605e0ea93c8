package org.firnline.app.care;

import java.util.List;
import org.firnline.care.CarePoint;
import org.firnline.care.ControlChart;
import org.firnline.care.DryerHealth;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The health of a dryer for programs. Values are SI; each figure names its unit. */
public final class CareJson {
  private CareJson() {}

  /**
   * The whole answer.
   *
   * @param silent files that gave no figure
   */
  public static ObjectNode of(List<CarePoint> points, DryerHealth health, List<String> silent) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode figures = json.putArray("figures");
    for (CarePoint point : points) {
      ObjectNode entry = figures.addObject();
      entry.put("run", point.run()).put("start_utc", point.at().toString());
      entry.put("figure", point.figure().label()).put("unit", point.figure().unit());
      entry.put("value_SI", point.value());
    }
    ArrayNode charts = json.putArray("charts");
    health.charts().forEach(chart -> chart(charts.addObject(), chart));
    ArrayNode causes = json.putArray("likelyCauses");
    health.causes().forEach(cause -> causes.add(cause.label()));
    ArrayNode without = json.putArray("filesWithoutFigures");
    silent.forEach(without::add);
    return json;
  }

  private static void chart(ObjectNode json, ControlChart chart) {
    json.put("figure", chart.figure().label()).put("unit", chart.figure().unit());
    json.put("runs", chart.points().size());
    json.put("usual_SI", chart.baseline().mean());
    json.put("usualDeviation_SI", chart.baseline().deviation());
    json.put("limitLow_SI", chart.baseline().mean() - chart.reach());
    json.put("limitHigh_SI", chart.baseline().mean() + chart.reach());
    json.put("average_SI", chart.averages().get(chart.averages().size() - 1));
    json.put("outNow", chart.isOutNow());
    chart
        .change()
        .ifPresent(
            change -> {
              ObjectNode entry = json.putObject("change");
              entry.put("since_utc", change.since().toString());
              entry.put("seen_utc", change.seen().toString());
              entry.put("size_SI", change.size()).put("upward", change.upward());
              entry.put("worse", change.worse());
            });
  }
}
