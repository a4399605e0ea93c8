package org.firnline.app.run;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.firnline.evidence.Band;
import org.firnline.planning.PlanAnswer;
import org.firnline.planning.PredictedPoint;
import org.firnline.units.Unit;
import org.springframework.context.MessageSource;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the plan expected, drawn behind what happened.
 *
 * @param answer the plan's answer
 * @param begins when the planned primary drying is taken to begin in the log
 * @param words the text bundle
 */
record PlannedBands(PlanAnswer answer, Instant begins, MessageSource words) {
  private static final Unit CELSIUS = Unit.parse("°C");

  /** Draws the bands over a log that starts at {@code start}. */
  void draw(ArrayNode bands, Instant start, Locale locale) {
    List<PredictedPoint> points = answer.prediction().points();
    if (points.isEmpty()) {
      return;
    }
    double offset_s = Duration.between(start, begins).toMillis() / 1_000.0;
    ObjectNode product = band(bands, "product", PicturePane.TEMPERATURE, locale);
    for (PredictedPoint point : points) {
      add(product, offset_s + point.time_s(), point.productTemperature_K());
    }
    double end_s = offset_s + points.get(points.size() - 1).time_s();
    constant(
        band(bands, "shelf", PicturePane.TEMPERATURE, locale),
        offset_s,
        end_s,
        CELSIUS.fromSi(answer.hold().shelf_K()));
    constant(
        band(bands, "pressure", PicturePane.PRESSURE, locale),
        offset_s,
        end_s,
        answer.hold().pressure_Pa());
  }

  private ObjectNode band(ArrayNode bands, String role, PicturePane pane, Locale locale) {
    ObjectNode band = bands.addObject();
    band.put("name", words.getMessage("run.planned." + role, null, locale));
    band.put("role", role).put("pane", pane.key());
    band.putArray("t");
    band.putArray("lo");
    band.putArray("mid");
    band.putArray("hi");
    return band;
  }

  private static void add(ObjectNode band, double second, Band kelvin) {
    point(
        band,
        second,
        CELSIUS.fromSi(kelvin.low()),
        CELSIUS.fromSi(kelvin.best()),
        CELSIUS.fromSi(kelvin.high()));
  }

  private static void constant(ObjectNode band, double from_s, double to_s, double value) {
    point(band, from_s, value, value, value);
    point(band, to_s, value, value, value);
  }

  private static void point(ObjectNode band, double second, double low, double mid, double high) {
    ((ArrayNode) band.get("t")).add(Math.rint(second));
    ((ArrayNode) band.get("lo")).add(Math.rint(low * 100) / 100);
    ((ArrayNode) band.get("mid")).add(Math.rint(mid * 100) / 100);
    ((ArrayNode) band.get("hi")).add(Math.rint(high * 100) / 100);
  }
}
