package org.firnline.app.settings;

import java.io.IOException;
import org.firnline.app.store.KeptSettings;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditQuestion;
import org.firnline.app.store.audit.AuditTrail;
import org.firnline.app.words.Shown;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Backups: where, when, and what came of the last ones. */
@Controller
class BackupPage {
  private static final String VIEW = "settings/backup";
  private static final int SHOWN = 10;

  private final Backups backups;
  private final KeptSettings settings;
  private final AuditTrail audit;
  private final Shown shown;

  BackupPage(Backups backups, KeptSettings settings, AuditTrail audit, Shown shown) {
    this.backups = backups;
    this.settings = settings;
    this.audit = audit;
    this.shown = shown;
  }

  /** A backup that was made. */
  record Made(String at, String file, String person) {}

  @GetMapping("/settings/backup")
  String backup(Model model) {
    fill(model);
    return VIEW;
  }

  @PostMapping("/settings/backup")
  ModelAndView plan(@RequestParam String folder, @RequestParam int hour, Model model) {
    if (backups.plan(folder, hour)) {
      return new ModelAndView("redirect:/settings/backup");
    }
    return refused(folder, model);
  }

  @PostMapping("/settings/backup/now")
  ModelAndView now(Model model) {
    try {
      backups.make();
      return new ModelAndView("redirect:/settings/backup");
    } catch (IOException | IllegalStateException | IllegalArgumentException e) {
      return refused(String.valueOf(e.getMessage()), model);
    }
  }

  private ModelAndView refused(String why, Model model) {
    fill(model);
    model.addAttribute("refused", why);
    return new ModelAndView(VIEW, model.asMap(), HttpStatus.UNPROCESSABLE_CONTENT);
  }

  private void fill(Model model) {
    model.addAttribute("folder", settings.find(Backups.FOLDER).orElse(""));
    model.addAttribute("hour", settings.find(Backups.HOUR).orElse("2"));
    AuditQuestion made =
        new AuditQuestion("", Action.BACKUP.key(), "", "", "", "", "", Long.MAX_VALUE);
    model.addAttribute(
        "made",
        audit.find(made, SHOWN).stream()
            .map(
                entry ->
                    new Made(
                        shown.fullMoment(entry.at()),
                        entry.subjectKey(),
                        entry.occasion().person()))
            .toList());
  }
}
