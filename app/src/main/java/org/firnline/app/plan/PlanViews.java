package org.firnline.app.plan;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.firnline.app.plan.PlanQuestions.Group;
import org.firnline.app.plan.PlanQuestions.Question;
import org.firnline.app.plan.PlanView.FieldView;
import org.firnline.app.plan.PlanView.GroupView;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.Assumption;
import org.firnline.app.planfile.PlanDefaults;
import org.firnline.app.planfile.PlanKey;
import org.firnline.app.planfile.PlanKeys;
import org.firnline.app.planfile.PlanProblem;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.words.Words;
import org.springframework.stereotype.Component;

/** Puts the plan page together: fields with their defaults and problems, and the answer. */
@Component
class PlanViews {
  private final KeptDryers dryers;
  private final ZoneId zone;

  PlanViews(KeptDryers dryers, ZoneId zone) {
    this.dryers = dryers;
    this.zone = zone;
  }

  PlanView of(PlanForm form, AnsweredPlan plan, Optional<Long> savedId, Locale locale) {
    Words words = Words.in(locale);
    Map<String, PlanProblem> problems =
        plan.reading().problems().stream()
            .collect(
                Collectors.toMap(PlanProblem::path, Function.identity(), (first, next) -> first));
    List<String> elsewhere =
        plan.reading().problems().stream()
            .filter(problem -> PlanQuestions.find(problem.path()).isEmpty())
            .map(PlanProblem::sentence)
            .toList();
    return new PlanView(
        form.title(),
        savedId,
        groups(PlanQuestions.FEW, form, problems, words),
        groups(PlanQuestions.MORE, form, problems, words),
        elsewhere,
        plan.reading().input().isPresent(),
        plan.answer().map(answer -> new PlanAnswerViews(words, zone).of(plan)));
  }

  private List<GroupView> groups(
      List<Group> groups, PlanForm form, Map<String, PlanProblem> problems, Words words) {
    return groups.stream()
        .map(
            group ->
                new GroupView(
                    words.say("plan.group." + group.key()),
                    group.questions().stream()
                        .map(question -> field(question, form, problems, words))
                        .toList()))
        .toList();
  }

  private FieldView field(
      Question question, PlanForm form, Map<String, PlanProblem> problems, Words words) {
    String path = question.path();
    Optional<String> known = Optional.ofNullable(form.ofDryer().get(path));
    Optional<Assumption> filled = PlanDefaults.of(path);
    boolean answered = form.typed().containsKey(path);
    return new FieldView(
        "q-" + path.replace('.', '-').replace('_', '-'),
        path,
        words.say("plan.field." + path),
        Optional.ofNullable(form.typed().get(path)).orElse(""),
        known.or(() -> filled.map(Assumption::text)).orElse(placeholder(path, words)),
        origin(path, known, answered, words),
        Optional.ofNullable(problems.get(path)).map(PlanViews::words),
        options(path),
        question.width());
  }

  /** Where the value in use comes from, or what would be used if the field were left empty. */
  private static String origin(String path, Optional<String> known, boolean answered, Words words) {
    if (words.has("plan.origin." + path)) {
      return words.say("plan.origin." + path);
    }
    Optional<Assumption> filled = PlanDefaults.of(path);
    String source =
        known
            .map(value -> words.say("plan.origin.dryer"))
            .or(() -> filled.map(value -> value.provenance().label()))
            .orElse("");
    String text = known.or(() -> filled.map(Assumption::text)).orElse("");
    return answered && !source.isEmpty() ? words.say("plan.origin.else", text, source) : source;
  }

  private static String placeholder(String path, Words words) {
    String key = "plan.placeholder." + path;
    return words.has(key) ? words.say(key) : "";
  }

  private static String words(PlanProblem problem) {
    return problem.problem().rule() + "; " + problem.problem().advice();
  }

  private List<String> options(String path) {
    return switch (path) {
      case "vessel.kind", "product.critical_kind" -> choices(path);
      case "vessel.frozen" -> orNotSaid(choices(path));
      case "dryer.name" -> dryerNames();
      default -> List.of();
    };
  }

  /** Choices that only some vessels know: not said until somebody says it. */
  private static List<String> orNotSaid(List<String> choices) {
    return Stream.concat(Stream.of(""), choices.stream()).toList();
  }

  private static List<String> choices(String path) {
    return PlanKeys.list().stream()
        .filter(key -> key.path().equals(path))
        .findFirst()
        .map(PlanKey::choices)
        .orElse(List.of());
  }

  private List<String> dryerNames() {
    Stream<String> known =
        dryers.list().stream().filter(dryer -> !dryer.planSection().isBlank()).map(KeptDryer::name);
    List<String> names = known.toList();
    return names.isEmpty() ? List.of("bench dryer") : names;
  }
}
