package org.firnline.app.run;

import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.firnline.app.reading.ChosenReading;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.app.reading.ReviewedRuns;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.store.RawFiles;
import org.firnline.app.web.NothingHere;
import org.firnline.logs.Log;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;
import org.firnline.units.QuantityKind;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One run: the picture, what it shows, and how its file was read. */
@Controller
class RunPage {
  private static final String ANSWER = "answer.";

  private final ReviewedRuns reviewed;
  private final KeptRuns runs;
  private final RawFiles files;
  private final RunViews views;
  private final ZoneId zone;

  RunPage(ReviewedRuns reviewed, KeptRuns runs, RawFiles files, RunViews views, ZoneId zone) {
    this.zone = zone;
    this.reviewed = reviewed;
    this.runs = runs;
    this.files = files;
    this.views = views;
  }

  @GetMapping("/runs/{id}")
  String run(@PathVariable long id, Beside beside, Model model, Locale locale) {
    return show(id, beside, Refused.nothing(), model, locale);
  }

  /**
   * What a person wants to see beside the run.
   *
   * @param with number of a run to lay over it
   * @param at the phase at which the two are brought together; empty for their starts
   * @param planAt the phase at which the plan's primary drying is taken to begin
   */
  record Beside(Optional<Long> with, Optional<String> at, Optional<String> planAt) {
    static Beside nothing() {
      return new Beside(Optional.empty(), Optional.empty(), Optional.empty());
    }
  }

  /** The page again, with what was typed and why it cannot be used. */
  String refuse(long id, Refused refused, Model model, Locale locale) {
    return show(id, Beside.nothing(), refused, model, locale);
  }

  /** Says what the run is and what to judge it against. */
  @PostMapping("/runs/{id}/judge")
  String judge(
      @PathVariable long id,
      @RequestParam String title,
      @RequestParam("dryer") long dryerId,
      @RequestParam(defaultValue = "") String critical,
      @RequestParam(defaultValue = "") String plan,
      Model model,
      Locale locale) {
    try {
      OptionalLong planId =
          plan.isBlank() ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(plan));
      OptionalDouble limit = criticalTemperature(critical);
      if (limit.isEmpty() && planId.isPresent()) {
        limit = views.criticalTemperature_K(planId.getAsLong());
      }
      runs.rename(id, title.isBlank() ? find(id).run().title() : title.strip(), dryerId);
      runs.judgeAgainst(id, planId, limit);
      return "redirect:/runs/" + id;
    } catch (QuantityFormatException e) {
      String problem = e.getMessage() + "; " + e.advice();
      return refuse(id, Refused.limit(critical, problem), model, locale);
    }
  }

  /** Takes what only a person can say about the file, and reads it again. */
  @PostMapping("/runs/{id}/reading")
  String answer(
      @PathVariable long id,
      @RequestParam Map<String, String> parameters,
      Model model,
      Locale locale) {
    Map<String, String> answers = new TreeMap<>();
    parameters.forEach(
        (name, answer) -> {
          if (name.startsWith(ANSWER) && !answer.isBlank()) {
            answers.put(name.substring(ANSWER.length()), answer.strip());
          }
        });
    Map<String, String> refused = ChosenReading.refused(answers, zone);
    if (!refused.isEmpty()) {
      return refuse(id, Refused.answers(answers, refused.keySet()), model, locale);
    }
    files.choose(find(id).file(), answers);
    return "redirect:/runs/" + id;
  }

  private static OptionalDouble criticalTemperature(String typed) {
    if (typed.isBlank()) {
      return OptionalDouble.empty();
    }
    boolean bare = typed.strip().matches("[+\\-−]?[0-9.,]+");
    String text = bare ? typed + " °C" : typed;
    return OptionalDouble.of(Quantity.parse(text, QuantityKind.TEMPERATURE).si());
  }

  private String show(long id, Beside beside, Refused refused, Model model, Locale locale) {
    ReviewedRun run = find(id);
    Log log = run.log().orElseThrow(NothingHere::new);
    model.addAttribute("run", views.of(run, log, beside, refused, locale));
    return "run/run";
  }

  private ReviewedRun find(long id) {
    return reviewed.find(id).orElseThrow(NothingHere::new);
  }
}
