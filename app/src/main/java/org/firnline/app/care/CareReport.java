package org.firnline.app.care;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.care.CareFigure;
import org.firnline.care.CarePoint;
import org.firnline.care.ControlChart;
import org.firnline.care.DryerHealth;

/** The health of a dryer for people at a terminal. */
public final class CareReport {
  private static final int WIDTH = 92;

  private final Words words;
  private final CareWords figures;

  public CareReport(Words words, Shown shown) {
    this.words = words;
    this.figures = new CareWords(words, shown);
  }

  /** Lines ready to print. */
  public String of(List<CarePoint> points, DryerHealth health, List<String> silent) {
    List<String> lines = new ArrayList<>();
    for (ControlChart chart : health.charts()) {
      boolean worse = chart.change().map(ControlChart.Change::worse).orElse(false);
      String state = words.say(worse ? "state.watch" : "state.pass");
      String text =
          words.say(
              "care.report.line",
              figures.name(chart.figure()),
              chart
                  .change()
                  .map(change -> figures.change(chart, change))
                  .orElseGet(() -> figures.standing(chart)));
      lines.addAll(TextTable.hanging(state, text, 7, WIDTH));
    }
    if (health.charts().isEmpty()) {
      latest(lines, points);
    }
    health
        .causes()
        .forEach(cause -> lines.addAll(TextTable.hanging("", figures.cause(cause), 0, WIDTH)));
    if (!silent.isEmpty()) {
      String names = String.join(", ", silent);
      lines.addAll(TextTable.hanging("", words.say("care.report.silent", names), 0, WIDTH));
    }
    return Quantities.plain(String.join(System.lineSeparator(), lines));
  }

  /** With too few runs for a trend the latest value of each figure is still worth reading. */
  private void latest(List<String> lines, List<CarePoint> points) {
    lines.add(words.say("care.summary.too-few"));
    Map<CareFigure, CarePoint> last = new EnumMap<>(CareFigure.class);
    points.forEach(point -> last.put(point.figure(), point));
    last.forEach(
        (figure, point) ->
            lines.add(
                "  "
                    + words.say(
                        "care.report.line",
                        figures.name(figure),
                        figures.value(figure, point.value()))));
  }
}
