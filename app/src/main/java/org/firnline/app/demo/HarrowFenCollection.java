package org.firnline.app.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.firnline.app.reading.ReviewedRuns;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.store.Place;
import org.firnline.app.store.Places;
import org.firnline.app.store.RawFile;
import org.firnline.app.store.RawFiles;
import org.firnline.logs.Log;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * A small culture-and-botanicals laboratory that does not exist, with three dryers and a few old
 * runs. All of its data is invented.
 */
@Component
public class HarrowFenCollection {
  private static final double BOG_MYRTLE_K = 273.15 - 31;

  private final Places places;
  private final KeptDryers dryers;
  private final KeptPlans plans;
  private final KeptRuns runs;
  private final RawFiles files;
  private final ReviewedRuns reviewed;

  HarrowFenCollection(
      Places places,
      KeptDryers dryers,
      KeptPlans plans,
      KeptRuns runs,
      RawFiles files,
      ReviewedRuns reviewed) {
    this.places = places;
    this.dryers = dryers;
    this.plans = plans;
    this.runs = runs;
    this.files = files;
    this.reviewed = reviewed;
  }

  /** Fills an empty store; a store that has a name already is left as it is. */
  @Transactional
  public void fill() {
    if (places.find().isPresent()) {
      return;
    }
    places.name(new Place("Harrow Fen Collection", true));
    dryers.add("Fen 1", "manifold", "Flask manifold, twelve ports, no shelves", "");
    dryers.add(
        "Fen 2",
        "shelves",
        "Shelf dryer for vials, two pressure gauges",
        dryerSection("fen2.yaml"));
    dryers.add("Fen 3", "trays", "Tray dryer for plants and food", dryerSection("fen3.yaml"));
    long bogMyrtle = plan("bog-myrtle.yaml");
    long moss = plan("sphagnum.yaml");
    OptionalDouble noLimit = OptionalDouble.empty();
    OptionalDouble bogMyrtleLimit = OptionalDouble.of(BOG_MYRTLE_K);
    run(
        "Reed peat, flasks 1 to 12",
        "Fen 1",
        "log09-manifold-epoch.csv",
        OptionalLong.empty(),
        noLimit);
    run("Moss cultures, March", "Fen 2", "log01-plain.csv", OptionalLong.of(moss), noLimit);
    run(
        "Bog-myrtle extract, second run",
        "Fen 2",
        "log05-quoted-missing.csv",
        OptionalLong.of(bogMyrtle),
        bogMyrtleLimit);
    run("Sedge seed extract", "Fen 3", "log02-decimal-comma.csv", OptionalLong.empty(), noLimit);
  }

  private String dryerSection(String name) {
    return text(name);
  }

  private long plan(String name) {
    String yaml = text(name);
    String title = yaml.lines().findFirst().orElse("").replaceFirst("^plan: *", "");
    return plans.add(title, yaml);
  }

  private void run(
      String title, String dryer, String log, OptionalLong plan, OptionalDouble limit_K) {
    try (InputStream content = resource(log)) {
      RawFile file = files.keep(content, log);
      Optional<Instant> started = reviewed.read(file).log().flatMap(Log::start);
      long id = runs.add(title, dryers.find(dryer).orElseThrow().id(), file.id(), started);
      runs.judgeAgainst(id, plan, limit_K);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(String name) {
    try (InputStream content = resource(name)) {
      return new String(content.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream resource(String name) {
    InputStream found = HarrowFenCollection.class.getResourceAsStream("/demo/" + name);
    if (found == null) {
      throw new IllegalStateException("the demo lacks its file " + name);
    }
    return found;
  }
}
