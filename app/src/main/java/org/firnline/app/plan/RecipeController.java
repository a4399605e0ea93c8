package org.firnline.app.plan;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.firnline.app.planfile.DesignJson;
import org.firnline.app.planfile.DesignedPlan;
import org.firnline.app.planfile.PlanInput;
import org.firnline.app.web.NothingHere;
import org.firnline.app.words.Words;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The recipe of what was typed: on the page, as files, and two stored plans side by side. */
@Controller
class RecipeController {
  private final PlanForms forms;
  private final DesignViews views;
  private final RecipeFiles files;

  RecipeController(PlanForms forms, DesignViews views, RecipeFiles files) {
    this.forms = forms;
    this.views = views;
    this.files = files;
  }

  /** The recipe for what was typed: the part of the page that takes a second. */
  @PostMapping("/plan/design")
  String design(@RequestParam Map<String, String> parameters, Model model, Locale locale) {
    forms
        .input(forms.form(parameters))
        .ifPresent(input -> model.addAttribute("design", views.of(DesignedPlan.of(input), locale)));
    return "plan/design :: design";
  }

  /** The recipe as a table. */
  @PostMapping("/plan/recipe.csv")
  ResponseEntity<String> csv(@RequestParam Map<String, String> parameters) {
    return asFile("recipe.csv", "text/csv", files.csv(designed(parameters)));
  }

  /** The recipe for programs. */
  @PostMapping("/plan/recipe.json")
  ResponseEntity<String> json(@RequestParam Map<String, String> parameters) {
    String recipe =
        designed(parameters)
            .first()
            .recipe()
            .map(found -> DesignJson.recipe(found).toPrettyString())
            .orElse("{}");
    return asFile("recipe.json", "application/json", recipe);
  }

  /** When it is dry, for a calendar. */
  @PostMapping("/plan/finish.ics")
  ResponseEntity<String> calendar(@RequestParam Map<String, String> parameters, Locale locale) {
    DesignedPlan plan = designed(parameters);
    if (!Double.isFinite(plan.first().outlook().lastTime_s().high())) {
      throw new NothingHere();
    }
    return asFile("finish.ics", "text/calendar", files.calendar(plan, Words.in(locale)));
  }

  /** Two stored plans side by side. */
  @GetMapping("/plan/compare")
  String compare(@RequestParam long left, @RequestParam long right, Model model, Locale locale) {
    model.addAttribute("left", views.of(stored(left), locale));
    model.addAttribute("right", views.of(stored(right), locale));
    return "plan/compare";
  }

  private DesignedPlan stored(long id) {
    return forms.stored(id).map(DesignedPlan::of).orElseThrow(NothingHere::new);
  }

  private DesignedPlan designed(Map<String, String> parameters) {
    Optional<PlanInput> input = forms.input(forms.form(parameters));
    return DesignedPlan.of(input.orElseThrow(NothingHere::new));
  }

  private static ResponseEntity<String> asFile(String name, String type, String text) {
    ContentDisposition attachment =
        ContentDisposition.attachment().filename(name, StandardCharsets.UTF_8).build();
    return ResponseEntity.ok()
        .contentType(new MediaType(MediaType.parseMediaType(type), StandardCharsets.UTF_8))
        .header(HttpHeaders.CONTENT_DISPOSITION, attachment.toString())
        .body(text);
  }
}
