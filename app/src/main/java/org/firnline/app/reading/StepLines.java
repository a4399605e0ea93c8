package org.firnline.app.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.firnline.app.words.LogClock;
import org.firnline.app.words.Shown;
import org.firnline.app.words.TextTable;
import org.firnline.app.words.Words;
import org.firnline.review.JudgedStep;
import org.firnline.units.Figures;
import org.firnline.units.Unit;

/** Plan against actual, for people at a terminal. */
final class StepLines {
  private static final Unit CELSIUS = Unit.parse("°C");

  private StepLines() {}

  static List<String> of(List<JudgedStep> steps, LogClock clock, Words words, int width) {
    List<String> lines = new ArrayList<>();
    if (steps.isEmpty()) {
      return lines;
    }
    lines.add(words.say("run.steps"));
    List<List<String>> rows = new ArrayList<>();
    for (JudgedStep step : steps) {
      rows.add(
          List.of(
              "  " + step.planned().name(),
              step.state().label(),
              step.start().map(clock::moment).orElse(""),
              pair(step.planned().shelf_K(), step.shelf_K(), StepLines::celsius),
              pair(step.planned().pressure_Pa(), step.pressure_Pa(), StepLines::pascal),
              pair(
                  OptionalDouble.of(step.planned().duration_s()),
                  step.duration_s(),
                  Shown::duration)));
    }
    lines.addAll(TextTable.of(rows));
    for (JudgedStep step : steps) {
      for (String difference : step.differences()) {
        String line = step.planned().name() + ": " + difference;
        lines.addAll(TextTable.hanging("  △", line, 4, width));
      }
    }
    lines.add("");
    return lines;
  }

  private static String pair(
      OptionalDouble planned, OptionalDouble actual, DoubleFunction<String> shown) {
    String left = planned.isPresent() ? shown.apply(planned.getAsDouble()) : "–";
    String right = actual.isPresent() ? shown.apply(actual.getAsDouble()) : "–";
    return left + " → " + right;
  }

  private static String celsius(double kelvin) {
    return Figures.decimals(CELSIUS.fromSi(kelvin), 1) + " °C";
  }

  private static String pascal(double pascal) {
    return Figures.decimals(pascal, 1) + " Pa";
  }
}
