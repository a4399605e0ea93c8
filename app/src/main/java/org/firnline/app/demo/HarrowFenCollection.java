package org.firnline.app.demo;

import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.Place;
import org.firnline.app.store.Places;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** A small culture-and-botanicals laboratory that does not exist, with three dryers. */
@Component
public class HarrowFenCollection {
  private final Places places;
  private final KeptDryers dryers;

  HarrowFenCollection(Places places, KeptDryers dryers) {
    this.places = places;
    this.dryers = dryers;
  }

  /** Fills an empty store; a store that has a name already is left as it is. */
  @Transactional
  public void fill() {
    if (places.find().isPresent()) {
      return;
    }
    places.name(new Place("Harrow Fen Collection", true));
    dryers.add("Fen 1", "manifold", "Flask manifold, twelve ports, collector at −82 °C", "");
    dryers.add("Fen 2", "shelves", "Shelf dryer, three shelves, two pressure gauges", "");
    dryers.add("Fen 3", "trays", "Tray dryer for plants and food, warm shelves", "");
  }
}
