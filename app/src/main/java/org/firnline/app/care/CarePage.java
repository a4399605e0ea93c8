package org.firnline.app.care;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptUse;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Care: every dryer's health over its runs. */
@Controller
class CarePage {
  private final CareViews views;
  private final KeptDryers dryers;
  private final KeptUse use;

  CarePage(CareViews views, KeptDryers dryers, KeptUse use) {
    this.views = views;
    this.dryers = dryers;
    this.use = use;
  }

  @GetMapping("/care")
  String care(Model model, Locale locale) {
    model.addAttribute("care", views.page(locale));
    return "care/care";
  }

  /** Hours and runs by group, for a spreadsheet. */
  @GetMapping("/care/use.csv")
  ResponseEntity<byte[]> use() {
    List<KeptDryer> known = dryers.list();
    StringBuilder text = new StringBuilder("started_utc,dryer,group,run,hours\n");
    for (KeptUse.Use one : use.list()) {
      String dryer =
          known.stream()
              .filter(kept -> kept.id() == one.dryerId())
              .map(KeptDryer::name)
              .findFirst()
              .orElse("");
      text.append(one.started()).append(',').append(quoted(dryer)).append(',');
      text.append(quoted(one.group())).append(',').append(quoted(one.title())).append(',');
      text.append(one.hours()).append('\n');
    }
    return ResponseEntity.ok()
        .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
        .header("Content-Disposition", "attachment; filename=\"machine-use.csv\"")
        .body(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** Quoted, and harmless in a spreadsheet that would run what looks like a formula. */
  private static String quoted(String cell) {
    String plain = cell.matches("^[=+@-].*") ? "'" + cell : cell;
    return '"' + plain.replace("\"", "\"\"") + '"';
  }
}
