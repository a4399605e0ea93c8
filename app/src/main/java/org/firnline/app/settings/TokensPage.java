package org.firnline.app.settings;

import java.time.Duration;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.firnline.app.store.people.AccountRefused;
import org.firnline.app.store.people.ApiTokens;
import org.firnline.app.store.people.Scope;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Keys for devices and scripts. */
@Controller
class TokensPage {
  private static final String VIEW = "settings/tokens";
  private static final int LONGEST_DAYS = 730;

  private final ApiTokens tokens;

  TokensPage(ApiTokens tokens) {
    this.tokens = tokens;
  }

  @GetMapping("/settings/tokens")
  String list(Model model) {
    fill(model);
    return VIEW;
  }

  /** Makes a key and shows it, this once. */
  @PostMapping("/settings/tokens")
  ModelAndView make(
      @RequestParam String name,
      @RequestParam(defaultValue = "") List<String> scopes,
      @RequestParam(defaultValue = "365") int days,
      Model model) {
    try {
      Duration valid = Duration.ofDays(Math.max(1, Math.min(LONGEST_DAYS, days)));
      String key = tokens.make(name, scopes(scopes), valid);
      fill(model);
      model.addAttribute("key", key);
      return new ModelAndView(VIEW, model.asMap());
    } catch (AccountRefused e) {
      fill(model);
      model.addAttribute("refused", e.reason());
      return new ModelAndView(VIEW, model.asMap(), HttpStatus.UNPROCESSABLE_CONTENT);
    }
  }

  @PostMapping("/settings/tokens/{id}/revoke")
  String revoke(@PathVariable long id) {
    tokens.revoke(id);
    return "redirect:/settings/tokens";
  }

  private void fill(Model model) {
    model.addAttribute("tokens", tokens.list());
    model.addAttribute("allScopes", Scope.values());
  }

  private static Set<Scope> scopes(List<String> keys) {
    return Arrays.stream(Scope.values())
        .filter(scope -> keys.contains(scope.key()))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Scope.class)));
  }
}
