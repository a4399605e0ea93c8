package org.firnline.app.settings;

import jakarta.servlet.http.HttpServletRequest;
import org.firnline.app.security.Sharing;
import org.firnline.app.security.Signed;
import org.firnline.app.store.KeptSettings;
import org.firnline.app.store.Place;
import org.firnline.app.store.Places;
import org.firnline.app.store.audit.Profile;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Where everything that is set for the whole laboratory is found. */
@Controller
class SettingsPage {
  private static final int LONGEST_NAME = 80;

  private final KeptSettings settings;
  private final Places places;
  private final Sharing sharing;
  private final Signed signed;

  SettingsPage(KeptSettings settings, Places places, Sharing sharing, Signed signed) {
    this.settings = settings;
    this.places = places;
    this.sharing = sharing;
    this.signed = signed;
  }

  @GetMapping("/settings")
  String settings(Model model, HttpServletRequest request) {
    model.addAttribute("shared", sharing.isOn());
    model.addAttribute("profile", settings.find(Profile.SETTING).orElse(Profile.OPEN.key()));
    signed.in(request).ifPresent(person -> model.addAttribute("person", person));
    return "settings/settings";
  }

  @PostMapping("/settings/place")
  String name(@RequestParam String name) {
    String given = name.strip();
    if (!given.isEmpty()) {
      boolean invented = places.find().map(Place::invented).orElse(false);
      String kept = given.substring(0, Math.min(LONGEST_NAME, given.length()));
      places.name(new Place(kept, invented));
    }
    return "redirect:/settings";
  }

  @PostMapping("/settings/profile")
  String profile(@RequestParam String profile) {
    settings.put(Profile.SETTING, Profile.of(profile).key());
    return "redirect:/settings";
  }
}
