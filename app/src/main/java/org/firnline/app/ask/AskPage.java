package org.firnline.app.ask;

import java.util.Locale;
import java.util.Map;
import org.firnline.app.web.NothingHere;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The page of one-minute answers; everything it knows stands in its address. */
@Controller
class AskPage {
  private final AskViews views;

  AskPage(AskViews views) {
    this.views = views;
  }

  @GetMapping("/ask")
  String first(@RequestParam Map<String, String> typed, Model model, Locale locale) {
    return show(AskTopics.all().get(0), typed, model, locale);
  }

  @GetMapping("/ask/{key}")
  String topic(
      @PathVariable String key,
      @RequestParam Map<String, String> typed,
      Model model,
      Locale locale) {
    return show(AskTopics.find(key).orElseThrow(NothingHere::new), typed, model, locale);
  }

  private String show(AskTopic topic, Map<String, String> typed, Model model, Locale locale) {
    model.addAttribute("ask", views.of(topic, typed, locale));
    return "ask/ask";
  }
}
