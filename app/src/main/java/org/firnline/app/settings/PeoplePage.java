package org.firnline.app.settings;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.firnline.app.security.Sharing;
import org.firnline.app.store.people.AccountRefused;
import org.firnline.app.store.people.Invitations;
import org.firnline.app.store.people.People;
import org.firnline.app.store.people.Person;
import org.firnline.app.store.people.Role;
import org.firnline.app.web.NothingHere;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** Accounts and what each may do. */
@Controller
class PeoplePage {
  private static final String VIEW = "settings/people";

  private final People people;
  private final Invitations invitations;
  private final Sharing sharing;

  PeoplePage(People people, Invitations invitations, Sharing sharing) {
    this.people = people;
    this.invitations = invitations;
    this.sharing = sharing;
  }

  @GetMapping("/settings/people")
  String list(Model model) {
    fill(model);
    return VIEW;
  }

  /** Opens an account and shows the link with which its person chooses a password. */
  @PostMapping("/settings/people")
  ModelAndView add(
      @RequestParam String login,
      @RequestParam String name,
      @RequestParam(defaultValue = "") List<String> roles,
      HttpServletRequest request,
      Model model) {
    try {
      long id = people.add(login, name, roles(roles));
      return invite(id, request, model);
    } catch (AccountRefused e) {
      return refused(e, model);
    }
  }

  @PostMapping("/settings/people/{id}/roles")
  ModelAndView grant(
      @PathVariable long id,
      @RequestParam(defaultValue = "") List<String> roles,
      @RequestParam(defaultValue = "false") boolean active,
      Model model) {
    Person person = people.find(id).orElseThrow(NothingHere::new);
    try {
      people.grant(person.id(), roles(roles), active);
      return new ModelAndView("redirect:/settings/people");
    } catch (AccountRefused e) {
      return refused(e, model);
    }
  }

  @PostMapping("/settings/people/{id}/invitation")
  ModelAndView invite(@PathVariable long id, HttpServletRequest request, Model model) {
    Person person = people.find(id).orElseThrow(NothingHere::new);
    String path = "/invitation/" + invitations.make(OptionalLong.of(person.id()));
    String address = request.getRequestURL().toString().replaceFirst("(://[^/]+).*", "$1");
    fill(model);
    model.addAttribute("link", address + path);
    return new ModelAndView(VIEW, model.asMap());
  }

  private ModelAndView refused(AccountRefused refused, Model model) {
    fill(model);
    model.addAttribute("refused", refused.reason());
    return new ModelAndView(VIEW, model.asMap(), HttpStatus.UNPROCESSABLE_CONTENT);
  }

  private void fill(Model model) {
    model.addAttribute("shared", sharing.isOn());
    model.addAttribute("people", people.list());
    model.addAttribute("allRoles", Role.values());
  }

  private static Set<Role> roles(List<String> keys) {
    return Arrays.stream(Role.values())
        .filter(role -> keys.contains(role.key()))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Role.class)));
  }
}
