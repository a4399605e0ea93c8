package org.firnline.app.demo;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.firnline.app.planfile.PlanFileReader;
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
  private static final Duration YESTERDAY = Duration.ofHours(20);
  private static final Duration UNDER_WAY = Duration.ofHours(21);
  private static final int LAST_WEEK = 6;

  private final Places places;
  private final KeptDryers dryers;
  private final KeptPlans plans;
  private final KeptRuns runs;
  private final RawFiles files;
  private final ReviewedRuns reviewed;
  private final TwoYears years;
  private final Clock clock;

  HarrowFenCollection(
      Places places,
      KeptDryers dryers,
      KeptPlans plans,
      KeptRuns runs,
      RawFiles files,
      ReviewedRuns reviewed,
      TwoYears years,
      Clock clock) {
    this.places = places;
    this.dryers = dryers;
    this.plans = plans;
    this.runs = runs;
    this.files = files;
    this.reviewed = reviewed;
    this.years = years;
    this.clock = clock;
  }

  /** Fills an empty store; a store that has a name already is left as it is. */
  @Transactional
  public void fill() {
    if (places.find().isPresent()) {
      return;
    }
    places.name(new Place("Harrow Fen Collection", true));
    dryers.add("Fen 1", "manifold", "Flask manifold, twelve ports, no shelves", text("fen1.yaml"));
    dryers.add("Fen 2", "shelves", "Shelf dryer for vials, two pressure gauges", text("fen2.yaml"));
    dryers.add("Fen 3", "trays", "Tray dryer for plants and food", text("fen3.yaml"));
    long bogMyrtle = plan("bog-myrtle.yaml");
    long moss = plan("sphagnum.yaml");
    long peat = plan("reed-peat.yaml");
    long sedge = plan("sedge-seed.yaml");
    plan("shared-run.yaml");
    Instant now = clock.instant();
    LocalDate today = LocalDate.now(clock);
    long flasks =
        run(
            "Fen 1",
            "Reed peat, flasks 1 to 12",
            "reed-peat.csv",
            RecentLog.endingAt(bytes("log09-manifold-epoch.csv"), now.minus(YESTERDAY)));
    judge(flasks, peat);
    long running =
        run(
            "Fen 2",
            "Moss cultures with trehalose",
            "moss-cultures.csv",
            RecentLog.underWay(bytes("log01-plain.csv"), now, UNDER_WAY));
    judge(running, moss);
    long second =
        run(
            "Fen 2",
            "Bog-myrtle extract, second run",
            "bog-myrtle-2.csv",
            bytes("log05-quoted-missing.csv"));
    judge(second, bogMyrtle);
    long trays =
        run(
            "Fen 3",
            "Sedge seed extract",
            "sedge-seed.csv",
            RecentLog.endingOn(bytes("log02-decimal-comma.csv"), today.minusDays(LAST_WEEK)));
    judge(trays, sedge);
    runs.list().forEach(reviewed::review);
    years.fill(now);
  }

  private long plan(String name) {
    String yaml = text(name);
    String title = yaml.lines().findFirst().orElse("").replaceFirst("^plan: *", "");
    return plans.add(title, yaml);
  }

  private long run(String dryer, String title, String fileName, byte[] log) {
    try (InputStream content = new ByteArrayInputStream(log)) {
      RawFile file = files.keep(content, fileName);
      Optional<Log> read = reviewed.read(file).log();
      Optional<Instant> started =
          read.filter(known -> known.basis().startKnown()).flatMap(Log::start);
      return runs.add(title, dryers.find(dryer).orElseThrow().id(), file.id(), started);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void judge(long run, long plan) {
    OptionalDouble limit_K =
        plans
            .find(plan)
            .flatMap(kept -> new PlanFileReader().read(kept.title(), kept.yaml()).input())
            .map(input -> input.load().product().critical().temperature().best())
            .map(OptionalDouble::of)
            .orElseGet(OptionalDouble::empty);
    runs.judgeAgainst(run, OptionalLong.of(plan), limit_K);
  }

  private static String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String name) {
    try (InputStream content = resource(name)) {
      return content.readAllBytes();
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
