package org.firnline.app.plan;

import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firnline.app.plan.PlanView.AnswerView;
import org.firnline.app.plan.PlanView.CheckRow;
import org.firnline.app.plan.PlanView.MatterRow;
import org.firnline.app.plan.PlanView.PointRow;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.CheckWords;
import org.firnline.app.planfile.Finish;
import org.firnline.app.planfile.PlanInput;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.evidence.Band;
import org.firnline.planning.PlanAnswer;
import org.firnline.planning.PredictedPoint;
import org.firnline.planning.Prediction;
import org.firnline.planning.Unknown;
import org.firnline.planning.Verdict;
import org.firnline.planning.WindowMap;
import org.firnline.units.QuantityKind;

/** Turns the answer of planning into the words, pictures and card of the page. */
final class PlanAnswerViews {
  private static final int MAP_COLUMNS = 24;
  private static final int MAP_ROWS = 40;
  private static final int TABLE_ROWS = 12;

  private final Words words;
  private final ZoneId zone;
  private final CheckWords checks;
  private final Shown shown;

  PlanAnswerViews(Words words, ZoneId zone) {
    this.words = words;
    this.zone = zone;
    this.checks = new CheckWords(words);
    this.shown = new Shown(zone, words);
  }

  AnswerView of(AnsweredPlan plan) {
    PlanInput input = plan.reading().input().orElseThrow();
    PlanAnswer answer = plan.answer().orElseThrow();
    WindowMap map = plan.map(MAP_COLUMNS, MAP_ROWS).orElseThrow();
    PlanPictures pictures = new PlanPictures(words, zone);
    Optional<Finish> finish = Finish.of(input, answer);
    return new AnswerView(
        headline(answer.prediction(), finish),
        comeBack(answer.prediction(), finish),
        hold(answer),
        state(answer.worst()),
        pictures.map(map, answer.hold()),
        mapSummary(answer),
        pictures.run(answer, input.start()),
        runSummary(answer.prediction()),
        points(answer.prediction()),
        answer.checks().stream()
            .map(
                line ->
                    new CheckRow(
                        state(line.verdict()),
                        checks.verdict(line),
                        checks.subject(line),
                        checks.sentence(line)))
            .toList(),
        matters(answer.prediction()));
  }

  private String headline(Prediction prediction, Optional<Finish> finish) {
    Band last = prediction.lastTime_s();
    if (!Double.isFinite(last.best())) {
      return words.say("plan.headline.never");
    }
    return finish
        .map(when -> words.say("plan.headline.done", shown.localSpan(when.low(), when.high())))
        .orElseGet(() -> words.say("plan.headline.hours", hours(last)));
  }

  private String comeBack(Prediction prediction, Optional<Finish> finish) {
    if (!Double.isFinite(prediction.lastTime_s().best())) {
      return words.say("plan.come-back.never");
    }
    return finish
        .map(when -> words.say("plan.come-back.at", shown.localMoment(when.high())))
        .orElseGet(() -> words.say("plan.come-back.no-start"));
  }

  private String hold(PlanAnswer answer) {
    return words.say(
        answer.recommended() ? "plan.hold.recommended" : "plan.hold.chosen",
        temperature(answer.hold().shelf_K()),
        pressure(answer.hold().pressure_Pa()));
  }

  private String mapSummary(PlanAnswer answer) {
    return words.say(
        "plan.map.summary",
        temperature(answer.hold().shelf_K()),
        pressure(answer.hold().pressure_Pa()),
        hours(answer.prediction().typicalTime_s()));
  }

  private String runSummary(Prediction prediction) {
    Band warmest = prediction.warmestTemperature_K();
    return words.say(
        "plan.run.summary",
        hours(prediction.typicalTime_s()),
        hours(prediction.lastTime_s()),
        temperature(warmest.best()));
  }

  private List<PointRow> points(Prediction prediction) {
    List<PredictedPoint> all = prediction.points();
    int stride = Math.max(1, all.size() / TABLE_ROWS);
    return IntStream.range(0, all.size())
        .filter(i -> i % stride == 0 || i == all.size() - 1)
        .mapToObj(all::get)
        .map(this::point)
        .toList();
  }

  private PointRow point(PredictedPoint point) {
    Band product = point.productTemperature_K();
    return new PointRow(
        Shown.duration(point.time_s()),
        temperature(product.best()),
        words.say("plan.between", temperature(product.low()), temperature(product.high())),
        Quantities.words(point.driedFraction().best(), QuantityKind.FRACTION));
  }

  private List<MatterRow> matters(Prediction prediction) {
    return prediction.shareOfDoubt().entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .sorted(Map.Entry.<Unknown, Double>comparingByValue(Comparator.reverseOrder()))
        .map(
            entry ->
                new MatterRow(
                    checks.unknown(entry.getKey()),
                    Quantities.words(entry.getValue(), QuantityKind.FRACTION),
                    checks.measurement(entry.getKey())))
        .toList();
  }

  private String hours(Band band) {
    return shown.durations(band.low(), band.high());
  }

  private static String state(Verdict verdict) {
    return switch (verdict) {
      case PASS -> "pass";
      case WATCH -> "watch";
      case STOP -> "stop";
    };
  }

  private static String temperature(double kelvin) {
    return Quantities.words(kelvin, QuantityKind.TEMPERATURE);
  }

  private static String pressure(double pascal) {
    return Quantities.words(pascal, QuantityKind.PRESSURE);
  }
}
