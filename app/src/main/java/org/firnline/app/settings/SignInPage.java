package org.firnline.app.settings;

import java.util.Optional;
import org.firnline.app.security.PasswordRules;
import org.firnline.app.security.Passwords;
import org.firnline.app.store.people.AccountRefused;
import org.firnline.app.store.people.Invitations;
import org.firnline.app.web.NothingHere;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The door: signing in, and links that let a person choose a password once. */
@Controller
class SignInPage {
  private final Invitations invitations;
  private final Passwords passwords;

  SignInPage(Invitations invitations, Passwords passwords) {
    this.invitations = invitations;
    this.passwords = passwords;
  }

  @GetMapping("/sign-in")
  String signIn(
      @RequestParam(required = false) @Nullable String wrong,
      @RequestParam(required = false) @Nullable String out,
      @RequestParam(required = false) @Nullable String chosen,
      Model model) {
    model.addAttribute("wrong", wrong != null);
    model.addAttribute("out", out != null);
    model.addAttribute("chosen", chosen != null);
    return "settings/sign-in";
  }

  @GetMapping("/invitation/{secret}")
  ModelAndView invitation(@PathVariable String secret) {
    return form(find(secret), Optional.empty(), "", "");
  }

  @PostMapping("/invitation/{secret}")
  ModelAndView accept(
      @PathVariable String secret,
      @RequestParam(defaultValue = "") String login,
      @RequestParam(defaultValue = "") String name,
      @RequestParam String password,
      @RequestParam String again) {
    Invitations.Invitation invitation = find(secret);
    if (!password.equals(again)) {
      return form(invitation, Optional.of("again"), login, name);
    }
    try {
      passwords.accept(invitation, login, name, password);
      return new ModelAndView("redirect:/sign-in?chosen");
    } catch (AccountRefused e) {
      return form(invitation, Optional.of(e.reason()), login, name);
    }
  }

  private Invitations.Invitation find(String secret) {
    return invitations.find(secret).orElseThrow(NothingHere::new);
  }

  private static ModelAndView form(
      Invitations.Invitation invitation, Optional<String> refused, String login, String name) {
    ModelAndView page = new ModelAndView("settings/invitation");
    page.addObject("first", invitation.personId().isEmpty());
    page.addObject("shortest", PasswordRules.SHORTEST);
    page.addObject("login", login);
    page.addObject("name", name);
    refused.ifPresent(
        reason -> {
          page.addObject("refused", reason);
          page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        });
    return page;
  }
}
