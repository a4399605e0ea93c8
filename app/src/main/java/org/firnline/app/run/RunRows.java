package org.firnline.app.run;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptPlan;
import org.firnline.app.store.KeptPlans;
import org.firnline.app.store.KeptRun;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.words.Shown;
import org.springframework.stereotype.Component;

/** The list of runs in words. */
@Component
class RunRows {
  private final KeptRuns runs;
  private final KeptDryers dryers;
  private final KeptPlans plans;
  private final Shown shown;

  RunRows(KeptRuns runs, KeptDryers dryers, KeptPlans plans, Shown shown) {
    this.runs = runs;
    this.dryers = dryers;
    this.plans = plans;
    this.shown = shown;
  }

  /** One run of the list; texts are empty where nothing is known. */
  record Row(
      long id,
      String title,
      String dryer,
      String started,
      String length,
      Optional<KeptRun.Worst> worst,
      String plan) {}

  List<Row> list() {
    Map<Long, String> dryerNames =
        dryers.list().stream().collect(Collectors.toMap(KeptDryer::id, KeptDryer::name));
    Map<Long, String> planTitles =
        plans.list().stream().collect(Collectors.toMap(KeptPlan::id, KeptPlan::title));
    return runs.list().stream().map(run -> row(run, dryerNames, planTitles)).toList();
  }

  private Row row(KeptRun run, Map<Long, String> dryerNames, Map<Long, String> planTitles) {
    return new Row(
        run.id(),
        run.title(),
        Optional.ofNullable(dryerNames.get(run.dryerId())).orElse(""),
        run.started().map(shown::fullMoment).orElse(""),
        run.started()
            .flatMap(from -> run.ended().map(to -> Duration.between(from, to)))
            .map(length -> Shown.duration((double) length.toSeconds()))
            .orElse(""),
        run.worst(),
        run.planId().isPresent()
            ? Optional.ofNullable(planTitles.get(run.planId().getAsLong())).orElse("")
            : "");
  }
}
