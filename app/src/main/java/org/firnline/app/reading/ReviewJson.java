package org.firnline.app.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.firnline.evidence.Problem;
import org.firnline.logs.Guess;
import org.firnline.logs.Log;
import org.firnline.logs.Question;
import org.firnline.logs.Reading;
import org.firnline.logs.channel.Channel;
import org.firnline.review.EndVerdict;
import org.firnline.review.Endpoint;
import org.firnline.review.Evidence;
import org.firnline.review.Finding;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The answer to a log for programs. */
public final class ReviewJson {
  private ReviewJson() {}

  /**
   * The whole answer.
   *
   * @param review what happened; empty when the log could not be read
   */
  public static ObjectNode of(Reading reading, Optional<Review> review) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    reading(json.putObject("reading"), reading);
    ArrayNode channels = json.putArray("channels");
    reading.log().ifPresent(log -> channels(channels, log));
    Instant origin = reading.log().map(log -> log.time().instant(0)).orElse(Instant.EPOCH);
    ArrayNode phases = json.putArray("phases");
    ArrayNode endpoints = json.putArray("endpoints");
    ArrayNode verdicts = json.putArray("verdicts");
    ArrayNode findings = json.putArray("findings");
    ArrayNode steps = json.putArray("steps");
    review.ifPresent(
        answer -> {
          answer.phases().forEach(phase -> phase(phases.addObject(), phase, origin));
          answer.endpoints().forEach(endpoint -> endpoint(endpoints.addObject(), endpoint, origin));
          answer.verdicts().forEach(verdict -> verdict(verdicts.addObject(), verdict, origin));
          answer.steps().forEach(step -> StepJson.put(steps.addObject(), step, origin));
          answer.findings().forEach(finding -> finding(findings.addObject(), finding, origin));
          answer
              .criticalTemperature_K()
              .ifPresent(limit -> json.put("criticalTemperature_K", limit));
        });
    json.putArray("estimates");
    return json;
  }

  private static void reading(ObjectNode json, Reading reading) {
    json.put("file", reading.fileName());
    json.put("form", reading.layout().form());
    json.put("encoding", reading.layout().encoding());
    json.put("delimiter", reading.layout().delimiter());
    json.put("decimalMark", reading.layout().decimalMark());
    json.put("timeRule", reading.layout().timeRule());
    reading.log().ifPresent(log -> json.put("zone", log.basis().zone().getId()));
    reading.log().ifPresent(log -> start(json.putObject("start"), log));
    ObjectNode rows = json.putObject("rows");
    rows.put("read", reading.rows().read());
    rows.put("kept", reading.rows().kept());
    rows.put("flagged", reading.rows().flagged());
    rows.put("setAside", reading.rows().setAside());
    rows.put("rejected", reading.rows().rejected());
    ArrayNode questions = json.putArray("questions");
    for (Question question : reading.questions()) {
      ObjectNode entry = questions.addObject();
      entry.put("kind", question.kind().label()).put("text", question.text());
      entry.put("assumed", question.assumed()).put("choice", question.choice());
      ArrayNode options = entry.putArray("options");
      question.options().forEach(options::add);
    }
    ArrayNode guesses = json.putArray("guesses");
    for (Guess guess : reading.guesses()) {
      ObjectNode entry = guesses.addObject();
      entry.put("what", guess.what()).put("value", guess.value());
      entry.put("reason", guess.reason()).put("confidence", guess.confidence().label());
    }
    ArrayNode problems = json.putArray("problems");
    for (Problem problem : reading.problems()) {
      ObjectNode entry = problems.addObject();
      entry.put("code", problem.code()).put("what", problem.what()).put("where", problem.where());
      entry.put("rule", problem.rule()).put("advice", problem.advice());
    }
  }

  private static void channels(ArrayNode channels, Log log) {
    for (Channel channel : log.channels()) {
      ObjectNode entry = channels.addObject();
      entry.put("name", channel.name());
      entry.put("role", channel.role().label());
      entry.put("unit", channel.unit());
      entry.put("confidence", channel.roleConfidence().and(channel.unitConfidence()).label());
      entry.put("roleConfidence", channel.roleConfidence().label());
      entry.put("unitConfidence", channel.unitConfidence().label());
    }
  }

  private static void phase(ObjectNode json, Phase phase, Instant origin) {
    json.put("name", phase.name().label());
    time(json, "start", Optional.of(phase.start()), origin);
    time(json, "end", Optional.of(phase.end()), origin);
    json.put("confidence", phase.confidence().label());
    json.put("reason", phase.reason());
  }

  private static void endpoint(ObjectNode json, Endpoint endpoint, Instant origin) {
    vesselOrLoad(json, endpoint.vessel());
    json.put("channel", endpoint.channel());
    json.put("method", endpoint.method().label());
    time(json, "at", endpoint.at(), origin);
    time(json, "low", endpoint.low(), origin);
    time(json, "high", endpoint.high(), origin);
    json.put("confidence", endpoint.confidence().label());
    json.put("note", endpoint.note());
  }

  private static void verdict(ObjectNode json, EndVerdict verdict, Instant origin) {
    vesselOrLoad(json, verdict.vessel());
    json.put("state", verdict.state().label());
    time(json, "at", verdict.at(), origin);
    time(json, "low", verdict.low(), origin);
    time(json, "high", verdict.high(), origin);
    json.put("confidence", verdict.confidence().label());
    ArrayNode reasons = json.putArray("reasons");
    verdict.reasons().forEach(reasons::add);
  }

  private static void vesselOrLoad(ObjectNode json, Optional<String> vessel) {
    vessel.ifPresentOrElse(name -> json.put("vessel", name), () -> json.put("load", true));
  }

  private static void finding(ObjectNode json, Finding finding, Instant origin) {
    json.put("kind", finding.kind().label());
    json.put("severity", finding.severity().label());
    time(json, "start", Optional.of(finding.start()), origin);
    time(json, "end", Optional.of(finding.end()), origin);
    json.put("confidence", finding.confidence().label());
    json.put("text", finding.text());
    ArrayNode causes = json.putArray("causes");
    finding.causes().forEach(causes::add);
    json.put("nextTime", finding.nextTime());
    ArrayNode evidence = json.putArray("evidence");
    for (Evidence seen : finding.evidence()) {
      ObjectNode entry = evidence.addObject();
      entry.put("channel", seen.channel());
      time(entry, "start", Optional.of(seen.start()), origin);
      time(entry, "end", Optional.of(seen.end()), origin);
      entry.put("seen", seen.seen());
    }
  }

  /** The first row; a file that does not say when it began has an assumed one. */
  private static void start(ObjectNode json, Log log) {
    json.put("utc", log.time().instant(0).toString());
    json.put("known", log.basis().startKnown());
  }

  /**
   * A moment as UTC and as seconds since the first row, which also hold where the start is assumed.
   */
  static void time(ObjectNode json, String key, Optional<Instant> at, Instant origin) {
    at.ifPresentOrElse(
        when -> {
          json.put(key + "_utc", when.toString());
          json.put(key + "_s", Duration.between(origin, when).toMillis() / 1_000.0);
        },
        () -> {
          json.putNull(key + "_utc");
          json.putNull(key + "_s");
        });
  }
}
