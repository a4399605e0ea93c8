package org.firnline.app.settings;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.util.Optional;
import org.firnline.app.security.OneTimeCodes;
import org.firnline.app.security.PasswordRules;
import org.firnline.app.security.Passwords;
import org.firnline.app.security.Signed;
import org.firnline.app.store.people.AccountRefused;
import org.firnline.app.store.people.People;
import org.firnline.app.store.people.Person;
import org.firnline.app.web.NothingHere;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** A person's own password and one-time codes. */
@Controller
class OwnAccountPage {
  private static final String SECRET = "one-time-secret";

  private final Signed signed;
  private final Passwords passwords;
  private final People people;

  OwnAccountPage(Signed signed, Passwords passwords, People people) {
    this.signed = signed;
    this.passwords = passwords;
    this.people = people;
  }

  @GetMapping("/settings/me")
  ModelAndView me(HttpServletRequest request) {
    return page(person(request), request.getSession(), Optional.empty());
  }

  @PostMapping("/settings/me/password")
  ModelAndView password(
      @RequestParam String present,
      @RequestParam String password,
      @RequestParam String again,
      HttpServletRequest request) {
    Person person = person(request);
    HttpSession session = request.getSession();
    if (!passwords.isPassword(person, present)) {
      return page(person, session, Optional.of("present"));
    }
    if (!password.equals(again)) {
      return page(person, session, Optional.of("again"));
    }
    try {
      passwords.choosePassword(person, password);
      request.changeSessionId();
      return new ModelAndView("redirect:/settings/me");
    } catch (AccountRefused e) {
      return page(person, session, Optional.of(e.reason()));
    }
  }

  /** One-time codes begin once a right one shows that the secret arrived. */
  @PostMapping("/settings/me/codes")
  ModelAndView codes(
      @RequestParam String code, @RequestParam String present, HttpServletRequest request) {
    Person person = person(request);
    HttpSession session = request.getSession();
    if (!passwords.isPassword(person, present)) {
      return page(person, session, Optional.of("present"));
    }
    if (person.hasSecondFactor()) {
      people.chooseSecondFactor(person.id(), "");
    } else if (!passwords.startCodes(person, secret(session), code)) {
      return page(person, session, Optional.of("code"));
    }
    session.removeAttribute(SECRET);
    return new ModelAndView("redirect:/settings/me");
  }

  private Person person(HttpServletRequest request) {
    return signed.in(request).orElseThrow(NothingHere::new);
  }

  private static ModelAndView page(Person person, HttpSession session, Optional<String> refused) {
    ModelAndView page = new ModelAndView("settings/me");
    page.addObject("person", person);
    page.addObject("shortest", PasswordRules.SHORTEST);
    if (!person.hasSecondFactor()) {
      page.addObject("secret", secret(session));
      page.addObject("address", OneTimeCodes.address(secret(session), person.login()));
    }
    refused.ifPresent(
        reason -> {
          page.addObject("refused", reason);
          page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
        });
    return page;
  }

  private static String secret(HttpSession session) {
    if (session.getAttribute(SECRET) instanceof String held) {
      return held;
    }
    String fresh = OneTimeCodes.freshSecret();
    session.setAttribute(SECRET, fresh);
    return fresh;
  }
}
