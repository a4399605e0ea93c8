package org.firnline.app.store;

import java.util.Optional;
import org.springframework.stereotype.Repository;

/** Reads and writes the name of the laboratory. */
@Repository
public class Places {
  private static final String NAME = "place.name";
  private static final String INVENTED = "place.invented";

  private final KeptSettings settings;

  Places(KeptSettings settings) {
    this.settings = settings;
  }

  /** The place, once it has a name. */
  public Optional<Place> find() {
    return settings
        .find(NAME)
        .map(
            name ->
                new Place(name, settings.find(INVENTED).map(Boolean::parseBoolean).orElse(false)));
  }

  /** Gives the place its name. */
  public void name(Place place) {
    settings.put(NAME, place.name());
    settings.put(INVENTED, Boolean.toString(place.invented()));
  }
}
