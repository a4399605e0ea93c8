package org.firnline.app.plan;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.firnline.app.planfile.PlanFileReader;
import org.firnline.app.planfile.PlanInput;
import org.firnline.app.planfile.PlanText;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptPlans;
import org.springframework.stereotype.Component;

/** From what was typed, or stored, to a form and the plan it amounts to. */
@Component
class PlanForms {
  private static final String FILE_NAME = "plan.yaml";
  private static final String DRYER = "dryer.name";

  private final KeptDryers dryers;
  private final KeptPlans plans;
  private final Clock clock;

  PlanForms(KeptDryers dryers, KeptPlans plans, Clock clock) {
    this.dryers = dryers;
    this.plans = plans;
    this.clock = clock;
  }

  /** A form about the dryer that was chosen, or about the first one. */
  PlanForm form(Map<String, String> parameters) {
    Optional<KeptDryer> chosen =
        Optional.ofNullable(parameters.get(DRYER))
            .map(dryers::find)
            .orElseGet(
                () ->
                    dryers.list().stream()
                        .filter(dryer -> dryer.kind().equals("shelves"))
                        .filter(dryer -> !dryer.planSection().isBlank())
                        .findFirst());
    Map<String, String> ofDryer = new LinkedHashMap<>();
    chosen.ifPresent(
        dryer -> {
          ofDryer.putAll(PlanText.flatten(dryer.planSection()));
          ofDryer.put(DRYER, dryer.name());
        });
    return PlanForm.of(parameters, ofDryer, LocalDateTime.now(clock));
  }

  /** The same plan on another dryer, with that dryer's own parameters. */
  PlanForm transferred(Map<String, String> plan, String dryer) {
    Map<String, String> moved = new LinkedHashMap<>(plan);
    moved.keySet().removeIf(path -> path.startsWith("dryer.") || path.startsWith("recipe."));
    moved.put(DRYER, dryer);
    return form(moved);
  }

  /** What was typed as a plan; empty when it cannot be used. */
  Optional<PlanInput> input(PlanForm form) {
    return new PlanFileReader().read(FILE_NAME, form.yaml()).input();
  }

  /** A stored plan; empty when there is none or it cannot be used. */
  Optional<PlanInput> stored(long id) {
    return plans
        .find(id)
        .flatMap(kept -> new PlanFileReader().read(FILE_NAME, kept.yaml()).input());
  }
}
