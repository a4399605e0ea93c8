package org.firnline.app.run;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.logs.Log;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.firnline.units.Unit;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The picture of a run as its script draws it: lines, phases, limits, numbered findings, words. */
@Component
class RunPicture {
  /** Columns of the first picture; zooming asks for more. */
  static final int FIRST_PIXELS = 1_200;

  private static final Unit CELSIUS = Unit.parse("°C");
  private static final double TEMPERATURE_SHARE = 0.62;

  private final MessageSource words;
  private final ZoneId zone;

  RunPicture(MessageSource words, ZoneId zone) {
    this.words = words;
    this.zone = zone;
  }

  /** The picture of a run whose log could be read. */
  String json(
      ReviewedRun run,
      Log log,
      List<RunView.FindingRow> findings,
      Optional<PlannedBands> planned,
      Locale locale) {
    ObjectNode picture = JsonNodeFactory.instance.objectNode();
    Instant start = log.start().orElse(Instant.EPOCH);
    picture.put("zone", zone.getId());
    if (log.basis().startKnown()) {
      picture.put("start_ms", start.toEpochMilli());
    } else {
      picture.putNull("start_ms");
    }
    picture.put("duration_s", Math.max(1, log.time().duration_s()));
    panes(picture);
    picture.set("lines", PictureLines.of(log, 0, log.time().duration_s(), FIRST_PIXELS));
    ArrayNode bands = picture.putArray("bands");
    planned.ifPresent(plan -> plan.draw(bands, start, locale));
    run.review().ifPresent(review -> describe(picture, review, start, locale));
    ArrayNode marks = picture.putArray("marks");
    for (RunView.FindingRow finding : findings) {
      ObjectNode mark = marks.addObject();
      mark.put("n", finding.number());
      mark.put("from_s", seconds(start, finding.start()));
      mark.put("to_s", seconds(start, finding.end()));
      mark.put("state", finding.state());
      mark.put("name", finding.kind());
    }
    words(picture.putObject("words"), locale);
    return picture.toString();
  }

  private static void panes(ObjectNode picture) {
    ArrayNode panes = picture.putArray("panes");
    pane(panes.addObject(), PictureRole.TEMPERATURE, "°C", "linear", TEMPERATURE_SHARE);
    pane(panes.addObject(), PictureRole.PRESSURE, "Pa", "log", 1 - TEMPERATURE_SHARE);
  }

  private static void pane(ObjectNode pane, String key, String unit, String scale, double share) {
    pane.put("key", key).put("unit", unit).put("scale", scale).put("share", share);
  }

  private void describe(ObjectNode picture, Review review, Instant start, Locale locale) {
    ArrayNode phases = picture.putArray("phases");
    for (Phase phase : review.phases()) {
      ObjectNode drawn = phases.addObject();
      drawn.put("name", phase.name().label());
      drawn.put("from_s", seconds(start, phase.start()));
      drawn.put("to_s", seconds(start, phase.end()));
    }
    ArrayNode limits = picture.putArray("limits");
    if (review.criticalTemperature_K().isPresent()) {
      ObjectNode limit = limits.addObject();
      limit.put("name", words.getMessage("run.limit.critical", null, locale));
      limit.put("pane", PictureRole.TEMPERATURE);
      limit.put("value", CELSIUS.fromSi(review.criticalTemperature_K().getAsDouble()));
    }
  }

  private void words(ObjectNode node, Locale locale) {
    for (String key : List.of("in", "out", "reset", "keys", "hint")) {
      node.put(key, words.getMessage("picture." + key, null, locale));
    }
  }

  private static double seconds(Instant start, Instant at) {
    return (at.toEpochMilli() - start.toEpochMilli()) / 1_000.0;
  }
}
