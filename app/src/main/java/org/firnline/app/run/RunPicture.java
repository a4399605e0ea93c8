package org.firnline.app.run;

import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.firnline.logs.Log;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.firnline.units.Unit;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.RawValue;

/** The picture of a run as its script draws it: lines, phases, limits, marks, words. */
@Component
class RunPicture {
  /** Columns of the first picture; zooming asks for more. */
  static final int FIRST_PIXELS = 1_200;

  private static final Unit CELSIUS = Unit.parse("°C");

  private final MessageSource words;
  private final ZoneId zone;

  RunPicture(MessageSource words, ZoneId zone) {
    this.words = words;
    this.zone = zone;
  }

  /**
   * What is drawn beside the channels.
   *
   * @param findings numbered
   * @param events lettered
   * @param planned what the plan expected
   * @param other a run laid over this one
   */
  record Content(
      List<RunView.FindingRow> findings,
      List<RunView.EventRow> events,
      Optional<PlannedBands> planned,
      Optional<OtherRun> other) {}

  /** The picture of a run whose log could be read. */
  String json(Log log, Review review, Content content, Locale locale) {
    ObjectNode picture = JsonNodeFactory.instance.objectNode();
    Instant start = log.start().orElse(Instant.EPOCH);
    picture.put("zone", zone.getId());
    if (log.basis().startKnown()) {
      picture.put("start_ms", start.toEpochMilli());
    } else {
      picture.putNull("start_ms");
    }
    picture.put("duration_s", Math.max(1, log.time().duration_s()));
    panes(picture.putArray("panes"), log, content);
    picture.putRawValue(
        "columns", new RawValue(PictureLines.json(log, 0, log.time().duration_s(), FIRST_PIXELS)));
    ArrayNode bands = picture.putArray("bands");
    content.planned().ifPresent(plan -> plan.draw(bands, start, locale));
    describe(picture, review, start, locale);
    marks(picture.putArray("marks"), content.findings());
    events(picture.putArray("events"), content.events());
    content.other().ifPresent(other -> other.draw(picture.putObject("other")));
    words(picture.putObject("words"), locale);
    return picture.toString();
  }

  private static void panes(ArrayNode panes, Log log, Content content) {
    Set<PicturePane> used = EnumSet.noneOf(PicturePane.class);
    DrawnChannel.of(log).forEach(channel -> used.add(channel.pane()));
    if (content.planned().isPresent()) {
      used.add(PicturePane.TEMPERATURE);
      used.add(PicturePane.PRESSURE);
    }
    double whole = used.stream().mapToDouble(PicturePane::weight).sum();
    for (PicturePane pane : used) {
      ObjectNode drawn = panes.addObject();
      drawn.put("key", pane.key()).put("unit", pane.unit()).put("scale", pane.scale());
      drawn.put("decimals", pane.decimals()).put("share", pane.weight() / whole);
    }
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
      limit.put("pane", PicturePane.TEMPERATURE.key());
      limit.put("value", CELSIUS.fromSi(review.criticalTemperature_K().getAsDouble()));
    }
  }

  private static void marks(ArrayNode marks, List<RunView.FindingRow> findings) {
    for (RunView.FindingRow finding : findings) {
      ObjectNode mark = marks.addObject();
      mark.put("n", finding.number()).put("state", finding.state()).put("name", finding.kind());
      mark.put("from_s", finding.from_s()).put("to_s", finding.to_s());
      ArrayNode evidence = mark.putArray("evidence");
      for (RunView.EvidenceRow seen : finding.evidence()) {
        ObjectNode stretch = evidence.addObject();
        stretch.put("from_s", seen.from_s()).put("to_s", seen.to_s());
        ArrayNode keys = stretch.putArray("keys");
        seen.channels().forEach(keys::add);
      }
    }
  }

  private static void events(ArrayNode events, List<RunView.EventRow> rows) {
    for (RunView.EventRow row : rows) {
      ObjectNode event = events.addObject();
      event.put("id", row.letter()).put("t_s", row.t_s()).put("kind", row.kind());
      event.put("name", row.name()).put("text", row.text());
    }
  }

  private void words(ObjectNode node, Locale locale) {
    for (String key : List.of("in", "out", "reset", "back", "on", "keys", "hint")) {
      node.put(key, words.getMessage("picture." + key, null, locale));
    }
  }

  static double seconds(Instant start, Instant at) {
    return (at.toEpochMilli() - start.toEpochMilli()) / 1_000.0;
  }
}
