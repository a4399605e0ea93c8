package org.firnline.app.care;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.app.reading.ReviewedRuns;
import org.firnline.app.store.KeptCare;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptRun;
import org.firnline.app.store.KeptRuns;
import org.firnline.care.CareFigures;
import org.firnline.care.CarePoint;
import org.firnline.logs.Log;
import org.springframework.stereotype.Component;

/** Reads the figures of finished runs from their logs, each once. */
@Component
class FiguresOfRuns {
  private static final Duration STILL_RUNNING = Duration.ofHours(12);

  private final KeptDryers dryers;
  private final KeptRuns runs;
  private final ReviewedRuns reviewed;
  private final KeptCare care;
  private final Clock clock;

  FiguresOfRuns(
      KeptDryers dryers, KeptRuns runs, ReviewedRuns reviewed, KeptCare care, Clock clock) {
    this.dryers = dryers;
    this.runs = runs;
    this.reviewed = reviewed;
    this.care = care;
    this.clock = clock;
  }

  /** Looks at every run whose figures are not kept yet. */
  void keepNewOnes() {
    for (KeptDryer dryer : dryers.list()) {
      Set<String> known = care.runs(dryer.id());
      List<KeptRun> fresh =
          runs.list().stream()
              .filter(run -> run.dryerId() == dryer.id())
              .filter(run -> !known.contains(key(run)))
              .toList();
      fresh.forEach(this::keep);
    }
  }

  private void keep(KeptRun run) {
    Optional<Log> log = reviewed.review(run).flatMap(ReviewedRun::log).filter(this::isOver);
    for (CarePoint point : log.map(CareFigures::of).orElse(List.of())) {
      CarePoint titled = new CarePoint(point.figure(), point.at(), run.title(), point.value());
      care.keep(run.dryerId(), key(run), titled);
    }
  }

  /** A log that may still grow has no figures yet. */
  private boolean isOver(Log log) {
    return log.end()
        .map(end -> Duration.between(end, clock.instant()).compareTo(STILL_RUNNING) > 0)
        .orElse(false);
  }

  private static String key(KeptRun run) {
    return "run " + run.id();
  }
}
