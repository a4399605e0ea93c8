package org.firnline.app.planfile;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.firnline.evidence.Band;
import org.firnline.planning.CheckLine;
import org.firnline.planning.Figure;
import org.firnline.planning.PlanAnswer;
import org.firnline.planning.PredictedPoint;
import org.firnline.planning.Prediction;
import org.firnline.units.QuantityKind;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The answer to a plan file for programs: SI numbers under keys that end in their unit. Times that
 * never come are the text "inf".
 */
public final class PlanJson {
  private final CheckWords words;

  public PlanJson(CheckWords words) {
    this.words = words;
  }

  /**
   * The answer to a plan that could be read; without hold and checks where the load is not one kind
   * of vial on shelves.
   */
  public ObjectNode answer(AnsweredPlan plan) {
    PlanReading reading = plan.reading();
    if (plan.answer().isPresent()) {
      return answer(reading, plan.answer().get());
    }
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("plan", reading.input().orElseThrow().title());
    assumptions(json, reading.assumptions());
    json.putArray("problems");
    return json;
  }

  private ObjectNode answer(PlanReading reading, PlanAnswer answer) {
    PlanInput input = reading.input().orElseThrow();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("plan", input.title());
    json.put("worst", CheckWords.key(answer.worst()));
    ObjectNode hold = json.putObject("hold");
    hold.put("shelfTemperature_K", answer.hold().shelf_K());
    hold.put("chamberPressure_Pa", answer.hold().pressure_Pa());
    hold.put("recommended", answer.recommended());
    prediction(json, answer.prediction());
    Finish.of(input, answer).ifPresent(finish -> finish(json.putObject("finish"), finish));
    ArrayNode checks = json.putArray("checks");
    answer.checks().forEach(line -> check(checks.addObject(), line));
    assumptions(json, reading.assumptions());
    json.putArray("problems");
    return json;
  }

  /** What is wrong with a plan that could not be read. */
  public static ObjectNode problems(PlanReading reading) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode problems = json.putArray("problems");
    for (PlanProblem problem : reading.problems()) {
      ObjectNode entry = problems.addObject();
      entry.put("key", problem.path());
      entry.put("line", problem.line());
      entry.put("column", problem.column());
      entry.put("code", problem.problem().code());
      entry.put("what", problem.problem().what());
      entry.put("rule", problem.problem().rule());
      entry.put("advice", problem.problem().advice());
    }
    return json;
  }

  private static void prediction(ObjectNode json, Prediction prediction) {
    json.put("dries", prediction.dries());
    band(json, "dryingTime_s", prediction.lastTime_s());
    band(json, "typicalDryingTime_s", prediction.typicalTime_s());
    band(json, "bottomTemperature_K", prediction.warmestTemperature_K());
    number(json, "overheatingRisk_fraction", prediction.overheatingRisk());
    band(json, "peakRate_kg_per_s", prediction.peakRate_kg_per_s());
    ObjectNode shares = json.putObject("shareOfDoubt_fraction");
    Map<String, Double> sorted = new TreeMap<>();
    prediction
        .shareOfDoubt()
        .forEach((unknown, share) -> sorted.put(CheckWords.key(unknown), share));
    sorted.forEach((unknown, share) -> number(shares, unknown, share));
    ArrayNode points = json.putArray("points");
    for (PredictedPoint point : prediction.points()) {
      ObjectNode entry = points.addObject();
      number(entry, "time_s", point.time_s());
      band(entry, "productTemperature_K", point.productTemperature_K());
      band(entry, "dried_fraction", point.driedFraction());
      number(entry, "rate_kg_per_s", point.rate_kg_per_s());
    }
  }

  private static void finish(ObjectNode json, Finish finish) {
    json.put("low_local", finish.low().toString());
    json.put("best_local", finish.best().toString());
    json.put("high_local", finish.high().toString());
  }

  private void check(ObjectNode json, CheckLine line) {
    json.put("subject", CheckWords.key(line.subject()));
    json.put("verdict", CheckWords.key(line.verdict()));
    json.put("text", words.sentence(line));
    ObjectNode figures = json.putObject("figures");
    for (Figure figure : line.figures()) {
      number(figures, figure.name() + suffix(figure.kind()), figure.si());
    }
  }

  private static String suffix(QuantityKind kind) {
    return switch (kind) {
      case FRACTION, NUMBER -> "_fraction";
      case MASS_FLOW -> "_kg_per_s";
      default -> "_" + kind.siUnit();
    };
  }

  private static void assumptions(ObjectNode json, List<Assumption> assumptions) {
    ArrayNode entries = json.putArray("assumptions");
    for (Assumption assumption : assumptions) {
      ObjectNode entry = entries.addObject();
      entry.put("key", assumption.path());
      entry.put("value", assumption.text());
      entry.put("provenance", assumption.provenance().label());
    }
  }

  private static void band(ObjectNode json, String key, Band band) {
    ObjectNode entry = json.putObject(key);
    number(entry, "low", band.low());
    number(entry, "best", band.best());
    number(entry, "high", band.high());
  }

  private static void number(ObjectNode json, String key, double value) {
    if (Double.isInfinite(value)) {
      json.put(key, value > 0 ? "inf" : "-inf");
    } else if (Double.isNaN(value)) {
      json.putNull(key);
    } else {
      json.put(key, value);
    }
  }
}
