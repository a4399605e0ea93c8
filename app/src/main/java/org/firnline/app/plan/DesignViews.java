package org.firnline.app.plan;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.firnline.app.plan.DesignView.Alternative;
import org.firnline.app.plan.DesignView.Card;
import org.firnline.app.plan.DesignView.Caution;
import org.firnline.app.plan.DesignView.Item;
import org.firnline.app.plan.DesignView.Step;
import org.firnline.app.planfile.DesignWords;
import org.firnline.app.planfile.DesignedPlan;
import org.firnline.app.planfile.HazardWords;
import org.firnline.app.planfile.PlanInput;
import org.firnline.app.planfile.SharedRun;
import org.firnline.app.planfile.StartBy;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.evidence.Band;
import org.firnline.planning.design.Proposal;
import org.firnline.units.QuantityKind;
import org.firnline.units.Unit;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Puts the designed part of the plan page together. */
@Component
class DesignViews {
  private static final Unit CELSIUS = Unit.parse("°C");
  private static final double STOP_RISK = 0.5;

  private final ZoneId zone;
  private final Clock clock;

  DesignViews(ZoneId zone, Clock clock) {
    this.zone = zone;
    this.clock = clock;
  }

  DesignView of(DesignedPlan plan, Locale locale) {
    Words words = Words.in(locale);
    Shown shown = new Shown(zone, words);
    DesignWords spoken = new DesignWords(words, shown);
    Band last = plan.first().outlook().lastTime_s();
    return new DesignView(
        headline(plan.input(), last, words, shown, spoken),
        comeBack(plan.input(), last, words, shown),
        startBy(last, words, shown),
        !plan.input().isVialsOnShelves(),
        state(plan),
        verdict(plan, words),
        plan.design()
            .penalty()
            .map(
                share ->
                    words.say("design.penalty", Quantities.words(share, QuantityKind.FRACTION)))
            .orElse(""),
        plan.design().proposals().stream()
            .map(proposal -> alternative(proposal, plan, spoken))
            .toList(),
        items(plan, spoken),
        spoken.cautions(plan).stream().map(caution -> caution(caution, words)).toList(),
        card(plan, words, spoken),
        path(plan.first()));
  }

  private static String headline(
      PlanInput input, Band last, Words words, Shown shown, DesignWords spoken) {
    if (!Double.isFinite(last.best())) {
      return words.say("plan.headline.never");
    }
    if (input.start().isEmpty() || !Double.isFinite(last.high())) {
      return words.say("plan.headline.hours", spoken.time(last));
    }
    LocalDateTime start = input.start().get();
    return words.say(
        "plan.headline.done", shown.localSpan(after(start, last.low()), after(start, last.high())));
  }

  private static String comeBack(PlanInput input, Band last, Words words, Shown shown) {
    if (!Double.isFinite(last.high())) {
      return words.say("plan.come-back.never");
    }
    return input
        .start()
        .map(start -> words.say("plan.come-back.at", shown.localMoment(after(start, last.high()))))
        .orElseGet(() -> words.say("plan.come-back.no-start"));
  }

  private String startBy(Band last, Words words, Shown shown) {
    return StartBy.after(LocalDateTime.now(clock), last.high())
        .map(
            found ->
                words.say(
                    "design.start-by",
                    shown.localMoment(found.start()),
                    shown.localMoment(found.end())))
        .orElse("");
  }

  private static LocalDateTime after(LocalDateTime start, double seconds) {
    return start.plusSeconds(Math.round(seconds));
  }

  private static String state(DesignedPlan plan) {
    if (!plan.isFound() || plan.first().outlook().overheatingRisk() > STOP_RISK) {
      return "stop";
    }
    return plan.first().outlook().overheatingRisk() > plan.input().wishes().risk()
        ? "watch"
        : "pass";
  }

  private static Optional<String> verdict(DesignedPlan plan, Words words) {
    if (plan.isFound()) {
      double risk = plan.first().outlook().overheatingRisk();
      return risk > plan.input().wishes().risk()
          ? Optional.of(words.say("design.too-warm", Quantities.words(risk, QuantityKind.FRACTION)))
          : Optional.empty();
    }
    return Optional.of(words.say("design.none"));
  }

  private static Alternative alternative(Proposal proposal, DesignedPlan plan, DesignWords spoken) {
    double risk = proposal.outlook().overheatingRisk();
    double accepted = plan.input().wishes().risk();
    return new Alternative(
        spoken.name(proposal),
        spoken.time(proposal.outlook().lastTime_s()),
        spoken.risk(risk),
        risk > STOP_RISK ? "stop" : risk > accepted + 0.01 ? "watch" : "pass",
        spoken.risk(proposal.outlook().pressureRisk()),
        spoken.settings(proposal),
        proposal.source().map(Object::toString).orElse(""),
        proposal.kind() == plan.first().kind());
  }

  private static List<Item> items(DesignedPlan plan, DesignWords spoken) {
    Band end = plan.first().outlook().lastTime_s();
    return SharedRun.of(plan).items().stream()
        .map(
            item ->
                new Item(
                    item.shared().owner(),
                    item.shared().name(),
                    spoken.time(item.shared().lastTime_s()),
                    spoken.time(item.aloneTime_s()),
                    spoken.risk(item.shared().overheatingRisk()),
                    spoken.note(item, end)))
        .toList();
  }

  private static Caution caution(HazardWords.Caution caution, Words words) {
    String state = caution.verdict().name().toLowerCase(Locale.ROOT);
    return new Caution(state, words.say("state." + state), caution.sentence());
  }

  private static Card card(DesignedPlan plan, Words words, DesignWords spoken) {
    List<DesignWords.Line> lines = plan.first().recipe().map(spoken::lines).orElse(List.of());
    Band last = plan.first().outlook().lastTime_s();
    return new Card(
        plan.input().title(),
        plan.input().whole().portions().stream().map(spoken::portion).toList(),
        plan.input().dryer().name(),
        IntStream.range(0, lines.size()).mapToObj(i -> step(i + 1, lines.get(i))).toList(),
        words.say("plan.card.primary.long", spoken.time(last)),
        spoken.cautions(plan).stream()
            .map(HazardWords.Caution::sentence)
            .collect(Collectors.joining(" ")));
  }

  private static Step step(int number, DesignWords.Line line) {
    return new Step(number, line.phase(), line.shelf(), line.pressure(), line.ramp(), line.hold());
  }

  private static String path(Proposal proposal) {
    ArrayNode path = JsonNodeFactory.instance.arrayNode();
    proposal
        .steps()
        .forEach(
            step ->
                step.pressure_Pa()
                    .ifPresent(
                        pascal ->
                            path.addObject()
                                .put("pressure", pascal)
                                .put("shelf", CELSIUS.fromSi(step.shelf_K()))));
    return path.toString();
  }
}
