package org.firnline.app.plan;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.firnline.app.planfile.AnsweredPlan;
import org.firnline.app.planfile.DesignedPlan;
import org.firnline.app.planfile.PlanText;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptPlan;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.web.NothingHere;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** The plan page and its live answer. */
@Controller
class PlanPage {
  private static final String FILE_NAME = "plan.yaml";
  private static final int LARGEST_FILE = 64 * 1024;

  private final KeptPlans plans;
  private final KeptDryers dryers;
  private final PlanForms forms;
  private final PlanViews views;
  private final DesignViews designs;
  private final Clock clock;

  PlanPage(
      KeptPlans plans,
      KeptDryers dryers,
      PlanForms forms,
      PlanViews views,
      DesignViews designs,
      Clock clock) {
    this.plans = plans;
    this.dryers = dryers;
    this.forms = forms;
    this.views = views;
    this.designs = designs;
    this.clock = clock;
  }

  /** An empty plan starts from an example; a link may carry answers. */
  @GetMapping("/plan")
  String fresh(@RequestParam Map<String, String> parameters, Model model, Locale locale) {
    Map<String, String> answers = new LinkedHashMap<>(PlanQuestions.EXAMPLE);
    answers.put("start", SpokenTime.soon(LocalDateTime.now(clock)));
    answers.putAll(parameters);
    return show(forms.form(answers), Optional.empty(), model, locale);
  }

  /** A stored plan; on another dryer when one is named. */
  @GetMapping("/plan/{id}")
  String stored(
      @PathVariable long id,
      @RequestParam(name = "on", defaultValue = "") String dryer,
      Model model,
      Locale locale) {
    KeptPlan plan = plans.find(id).orElseThrow(NothingHere::new);
    Map<String, String> typed = PlanText.flatten(plan.yaml());
    return dryer.isEmpty()
        ? show(forms.form(typed), Optional.of(id), model, locale)
        : show(forms.transferred(typed, dryer), Optional.empty(), model, locale);
  }

  /** A stored plan as the file it is. */
  @GetMapping("/plan/{id}/plan.yaml")
  ResponseEntity<String> file(@PathVariable long id) {
    return asFile(plans.find(id).orElseThrow(NothingHere::new).yaml());
  }

  /** What was typed, answered anew: only the part of the page that changes. */
  @PostMapping("/plan/answer")
  String answer(@RequestParam Map<String, String> parameters, Model model, Locale locale) {
    show(forms.form(parameters), Optional.empty(), model, locale);
    return "plan/answer :: answer";
  }

  /** What was typed, answered on a whole page: for browsers without scripts. */
  @PostMapping("/plan/show")
  String whole(@RequestParam Map<String, String> parameters, Model model, Locale locale) {
    PlanForm form = forms.form(parameters);
    forms
        .input(form)
        .ifPresent(
            input -> model.addAttribute("design", designs.of(DesignedPlan.of(input), locale)));
    return show(form, Optional.empty(), model, locale);
  }

  /** Stores a plan that makes sense; one that does not comes back with its problems. */
  @PostMapping("/plan")
  String save(@RequestParam Map<String, String> parameters, Model model, Locale locale) {
    PlanForm form = forms.form(parameters);
    String yaml = form.yaml();
    AnsweredPlan plan = AnsweredPlan.of(FILE_NAME, yaml);
    if (plan.reading().input().isEmpty()) {
      return show(form, Optional.empty(), model, locale);
    }
    String title = plan.reading().input().orElseThrow().title();
    return "redirect:/plan/" + plans.add(title, yaml);
  }

  /** A plan file from somewhere else, with everything wrong with it said. */
  @PostMapping("/plan/open")
  String open(@RequestParam("file") MultipartFile file, Model model, Locale locale)
      throws IOException {
    String yaml;
    try (InputStream content = file.getInputStream()) {
      yaml = new String(content.readNBytes(LARGEST_FILE), StandardCharsets.UTF_8);
    }
    PlanForm form = forms.form(PlanText.flatten(yaml));
    AnsweredPlan asWritten = AnsweredPlan.of(FILE_NAME, yaml);
    AnsweredPlan shown =
        asWritten.reading().input().isPresent()
            ? AnsweredPlan.of(FILE_NAME, form.yaml())
            : asWritten;
    return show(form, shown, Optional.empty(), model, locale);
  }

  /** What was typed as a plan file. */
  @PostMapping("/plan/file")
  ResponseEntity<String> file(@RequestParam Map<String, String> parameters) {
    return asFile(forms.form(parameters).yaml());
  }

  private String show(PlanForm form, Optional<Long> savedId, Model model, Locale locale) {
    return show(form, AnsweredPlan.of(FILE_NAME, form.yaml()), savedId, model, locale);
  }

  private String show(
      PlanForm form, AnsweredPlan plan, Optional<Long> savedId, Model model, Locale locale) {
    model.addAttribute("plan", views.of(form, plan, savedId, locale));
    model.addAttribute("stored", plans.list());
    model.addAttribute("dryers", dryers.list());
    return "plan/plan";
  }

  private static ResponseEntity<String> asFile(String yaml) {
    ContentDisposition attachment =
        ContentDisposition.attachment().filename(FILE_NAME, StandardCharsets.UTF_8).build();
    return ResponseEntity.ok()
        .contentType(new MediaType("application", "yaml", StandardCharsets.UTF_8))
        .header(HttpHeaders.CONTENT_DISPOSITION, attachment.toString())
        .body(yaml);
  }
}
