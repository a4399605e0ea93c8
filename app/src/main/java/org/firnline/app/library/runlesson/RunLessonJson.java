package org.firnline.app.library.runlesson;

import org.firnline.learning.run.Learned;
import org.firnline.learning.run.Parameter;
import org.firnline.learning.run.RunLesson;
import org.firnline.review.Finding;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a run teaches, for programs: values, intervals, correlations and the residual picture. */
public final class RunLessonJson {
  private RunLessonJson() {}

  /** The whole answer. */
  public static ObjectNode of(RunLessons lessons) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode refused = json.putArray("refusedBecause");
    for (Finding finding : lessons.refusals()) {
      ObjectNode entry = refused.addObject();
      entry.put("kind", finding.kind().label()).put("text", finding.text());
      entry.put("start_utc", finding.start().toString()).put("end_utc", finding.end().toString());
    }
    ArrayNode vessels = json.putArray("vessels");
    lessons.lessons().forEach(lesson -> lesson(vessels.addObject(), lesson));
    return json;
  }

  private static void lesson(ObjectNode json, RunLesson lesson) {
    json.put("vessel", lesson.vessel().name());
    json.put("meanPressure_Pa", lesson.vessel().meanPressure());
    json.put("determined", lesson.determined());
    json.put("noise_K", lesson.noise());
    json.put("residualLagOneCorrelation", lesson.together());
    if (Double.isFinite(lesson.endMisfit())) {
      json.put("endPredictedMinusSeen_s", lesson.endMisfit());
    }
    ObjectNode values = json.putObject("values");
    for (Learned learned : lesson.learned()) {
      ObjectNode entry = values.putObject(key(learned.parameter()));
      entry.put("best", learned.best());
      entry.put("low", learned.low()).put("high", learned.high());
      entry.put("spread_fraction", learned.spread());
      entry.put("before", learned.prior().best());
      entry.put("beforeSpread_fraction", learned.prior().spread());
      entry.put("held", learned.isHeld()).put("mostlyBefore", learned.isMostlyPrior());
    }
    ArrayNode pairs = json.putArray("notToldApart");
    for (RunLesson.Pair pair : lesson.indistinct()) {
      ObjectNode entry = pairs.addObject();
      entry.put("first", pair.first().label()).put("second", pair.second().label());
      entry.put("correlation", pair.correlation());
    }
    ArrayNode correlations = json.putArray("correlations");
    lesson
        .correlations()
        .forEach(
            row -> {
              ArrayNode line = correlations.addArray();
              row.forEach(line::add);
            });
    residuals(json.putArray("residuals"), lesson);
  }

  private static void residuals(ArrayNode json, RunLesson lesson) {
    for (RunLesson.Residual residual : lesson.residuals()) {
      ObjectNode entry = json.addObject();
      entry.put("time_s", residual.time()).put("observed_K", residual.observed());
      entry.put("predicted_K", residual.predicted());
    }
  }

  private static String key(Parameter parameter) {
    return switch (parameter) {
      case HEAT_TRANSFER -> "heatTransfer_W_per_m2_K";
      case INITIAL_RESISTANCE -> "initialResistance_m_per_s";
      case RESISTANCE_GROWTH -> "resistanceGrowth_per_s";
      case RESISTANCE_LEVELING -> "resistanceLeveling_per_m";
      case THERMOMETER_OFFSET -> "thermometerOffset_K";
    };
  }
}
