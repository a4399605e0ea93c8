package org.firnline.app.web;

import org.firnline.app.store.Place;
import org.firnline.app.store.Places;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** What the layout of every page shows. */
@ControllerAdvice
class EveryPage {
  private static final Place UNNAMED = new Place("Firnline", false);

  private final Places places;

  EveryPage(Places places) {
    this.places = places;
  }

  @ModelAttribute("place")
  Place place() {
    return places.find().orElse(UNNAMED);
  }
}
