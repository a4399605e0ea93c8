package org.firnline.app.plan;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.firnline.app.words.Words;
import org.firnline.evidence.Band;
import org.firnline.evidence.Estimate;
import org.firnline.planning.Hold;
import org.firnline.planning.PlanAnswer;
import org.firnline.planning.PredictedPoint;
import org.firnline.planning.WindowMap;
import org.firnline.units.Unit;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What the scripts of the plan page draw: the window map and the predicted run, as JSON. */
final class PlanPictures {
  private static final Unit CELSIUS = Unit.parse("°C");
  private static final double HOUR_S = 3_600;
  private static final double PERCENT = 100;
  private static final double NINE_IN_TEN = 1.645;

  private final Words words;
  private final ZoneId zone;

  PlanPictures(Words words, ZoneId zone) {
    this.words = words;
    this.zone = zone;
  }

  String map(WindowMap map, Hold hold) {
    ObjectNode picture = JsonNodeFactory.instance.objectNode();
    ArrayNode pressure = picture.putArray("pressure");
    map.pressures_Pa().forEach(pressure::add);
    ArrayNode shelf = picture.putArray("shelf");
    map.shelves_K().forEach(kelvin -> shelf.add(celsius(kelvin)));
    ArrayNode time = picture.putArray("time_h");
    for (List<Double> row : map.dryingTime_s()) {
      ArrayNode cells = time.addArray();
      row.forEach(seconds -> finite(cells, seconds / HOUR_S));
    }
    limits(picture.putArray("limits"), map);
    picture
        .putObject("recipe")
        .put("pressure", hold.pressure_Pa())
        .put("shelf", celsius(hold.shelf_K()));
    words(picture.putObject("words"), List.of("keys", "hint", "never", "shelf", "pressure"));
    return picture.toString();
  }

  private void limits(ArrayNode limits, WindowMap map) {
    ObjectNode product = limit(limits, "plan.limit.product", map);
    ArrayNode shelf = product.putArray("shelf");
    ArrayNode low = product.putArray("lo");
    ArrayNode high = product.putArray("hi");
    for (Optional<Band> band : map.productLimit_K()) {
      kelvin(shelf, band.map(Band::best));
      kelvin(low, band.map(Band::low));
      kelvin(high, band.map(Band::high));
    }
    ObjectNode capability = limit(limits, "plan.limit.capability", map);
    ArrayNode carried = capability.putArray("shelf");
    map.capabilityLimit_K().forEach(limit -> kelvin(carried, limit));
  }

  private ObjectNode limit(ArrayNode limits, String key, WindowMap map) {
    ObjectNode limit = limits.addObject();
    limit.put("name", words.say(key));
    limit.put("side", "above");
    ArrayNode pressure = limit.putArray("pressure");
    map.pressures_Pa().forEach(pressure::add);
    return limit;
  }

  String run(PlanAnswer answer, Optional<LocalDateTime> start) {
    ObjectNode picture = JsonNodeFactory.instance.objectNode();
    List<PredictedPoint> points = answer.prediction().points();
    Band last = answer.prediction().lastTime_s();
    double end = Double.isFinite(last.high()) ? last.high() * 1.04 : HOUR_S;
    picture.put("zone", zone.getId());
    start.ifPresentOrElse(
        at -> picture.put("start_ms", at.atZone(zone).toInstant().toEpochMilli()),
        () -> picture.putNull("start_ms"));
    picture.put("duration_s", end);
    ArrayNode panes = picture.putArray("panes");
    pane(panes, "temperature", "°C", "linear", 0.52);
    pane(panes, "dried", "%", "linear", 0.27);
    pane(panes, "pressure", "Pa", "log", 0.21);
    ArrayNode lines = picture.putArray("lines");
    constant(lines, "shelf", celsius(answer.hold().shelf_K()), "temperature", end);
    constant(lines, "pressure", answer.hold().pressure_Pa(), "pressure", end);
    ArrayNode bands = picture.putArray("bands");
    product(bands, points);
    dried(bands, points);
    limit(picture.putArray("limits"), answer);
    phases(picture.putArray("phases"), answer);
    picture.putArray("marks");
    words(picture.putObject("words"), List.of("in", "out", "reset", "run-keys", "run-hint"));
    return picture.toString();
  }

  private static void pane(ArrayNode panes, String key, String unit, String scale, double share) {
    panes.addObject().put("key", key).put("unit", unit).put("scale", scale).put("share", share);
  }

  private void constant(ArrayNode lines, String role, double value, String pane, double end) {
    ObjectNode line = lines.addObject();
    line.put("key", role).put("name", words.say("plan.line." + role));
    line.put("role", role).put("pane", pane).put("style", "solid");
    line.putArray("t").add(0.0).add(end);
    line.putArray("lo").add(value).add(value);
  }

  private void product(ArrayNode bands, List<PredictedPoint> points) {
    Drawn drawn = band(bands, "product", "product", "temperature");
    for (PredictedPoint point : points) {
      Band band = point.productTemperature_K();
      drawn.add(point.time_s(), celsius(band.low()), celsius(band.best()), celsius(band.high()));
    }
  }

  private void dried(ArrayNode bands, List<PredictedPoint> points) {
    Drawn drawn = band(bands, "dried", "collector", "dried");
    for (PredictedPoint point : points) {
      Band band = point.driedFraction();
      drawn.add(point.time_s(), PERCENT * band.low(), PERCENT * band.best(), PERCENT * band.high());
    }
  }

  private record Drawn(ArrayNode t, ArrayNode low, ArrayNode middle, ArrayNode high) {
    void add(double seconds, double lowest, double best, double highest) {
      t.add(seconds);
      finite(low, lowest);
      finite(middle, best);
      finite(high, highest);
    }
  }

  private Drawn band(ArrayNode bands, String key, String role, String pane) {
    ObjectNode band = bands.addObject();
    band.put("name", words.say("plan.line." + key)).put("role", role).put("pane", pane);
    return new Drawn(
        band.putArray("t"), band.putArray("lo"), band.putArray("mid"), band.putArray("hi"));
  }

  private void limit(ArrayNode limits, PlanAnswer answer) {
    Estimate critical = answer.question().load().product().critical().temperature();
    limits
        .addObject()
        .put("name", words.say("run.limit.critical"))
        .put("pane", "temperature")
        .put("value", celsius(critical.best()))
        .put("lo", celsius(critical.shifted(-NINE_IN_TEN)))
        .put("hi", celsius(critical.shifted(NINE_IN_TEN)));
  }

  private void phases(ArrayNode phases, PlanAnswer answer) {
    Band last = answer.prediction().lastTime_s();
    if (!Double.isFinite(last.high())) {
      return;
    }
    phase(phases, "plan.phase.ice", 0, last.low());
    phase(phases, "plan.phase.last", last.low(), last.high());
  }

  private void phase(ArrayNode phases, String key, double from, double to) {
    phases.addObject().put("name", words.say(key)).put("from_s", from).put("to_s", to);
  }

  private void words(ObjectNode node, List<String> keys) {
    keys.forEach(key -> node.put(key.replace("run-", ""), words.say("plan.picture." + key)));
  }

  private static double celsius(double kelvin) {
    return Math.rint(CELSIUS.fromSi(kelvin) * 1_000) / 1_000;
  }

  private static void kelvin(ArrayNode array, Optional<Double> kelvin) {
    kelvin.ifPresentOrElse(value -> array.add(celsius(value)), array::addNull);
  }

  private static void finite(ArrayNode array, double value) {
    if (Double.isFinite(value)) {
      array.add(Math.rint(value * 1e4) / 1e4);
    } else {
      array.addNull();
    }
  }
}
