package org.firnline.app.reading;

import java.time.Instant;
import java.util.OptionalDouble;
import org.firnline.review.JudgedStep;
import org.firnline.review.PlannedStep;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A planned step beside what happened, for programs. */
final class StepJson {
  private StepJson() {}

  static void put(ObjectNode json, JudgedStep step, Instant origin) {
    json.put("name", step.planned().name());
    json.put("phase", step.planned().phase().label());
    json.put("state", step.state().label());
    ReviewJson.time(json, "start", step.start(), origin);
    ReviewJson.time(json, "end", step.end(), origin);
    planned(json.putObject("planned"), step.planned());
    ObjectNode actual = json.putObject("actual");
    settings(actual, step.shelf_K(), step.ramp_K_per_s(), step.pressure_Pa());
    number(actual, "duration_s", step.duration_s());
    ArrayNode differences = json.putArray("differences");
    step.differences().forEach(differences::add);
  }

  private static void planned(ObjectNode json, PlannedStep step) {
    settings(json, step.shelf_K(), step.ramp_K_per_s(), step.pressure_Pa());
    json.put("duration_s", step.duration_s());
  }

  private static void settings(
      ObjectNode json, OptionalDouble shelf, OptionalDouble ramp, OptionalDouble pressure) {
    number(json, "shelf_K", shelf);
    number(json, "ramp_K_per_s", ramp);
    number(json, "pressure_Pa", pressure);
  }

  private static void number(ObjectNode json, String key, OptionalDouble value) {
    if (value.isPresent()) {
      json.put(key, value.getAsDouble());
    } else {
      json.putNull(key);
    }
  }
}
