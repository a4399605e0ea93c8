package org.firnline.app.today;

import org.firnline.app.store.KeptDryers;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The first page: one row a dryer. */
@Controller
class TodayPage {
  private final KeptDryers dryers;

  TodayPage(KeptDryers dryers) {
    this.dryers = dryers;
  }

  @GetMapping("/")
  String today(Model model) {
    model.addAttribute("dryers", dryers.list());
    return "today/today";
  }
}
