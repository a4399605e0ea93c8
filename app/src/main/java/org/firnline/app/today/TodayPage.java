package org.firnline.app.today;

import java.time.Clock;
import java.util.Locale;
import org.firnline.app.words.Shown;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The first page: one row a dryer. */
@Controller
class TodayPage {
  private final TodayRows rows;
  private final Shown shown;
  private final Clock clock;

  TodayPage(TodayRows rows, Shown shown, Clock clock) {
    this.rows = rows;
    this.shown = shown;
    this.clock = clock;
  }

  @GetMapping("/")
  String today(Model model, Locale locale) {
    model.addAttribute("now", shown.moment(clock.instant()));
    model.addAttribute("rows", rows.list(locale));
    return "today/today";
  }
}
