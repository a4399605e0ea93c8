package org.firnline.planning.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.drying.secondary.SecondaryDemand;
import org.firnline.drying.secondary.SecondaryDesign;
import org.firnline.drying.secondary.SecondaryDesigner;
import org.firnline.lab.Dryer;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Range;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipePhase;
import org.firnline.lab.RecipeStep;
import org.firnline.planning.forecast.Sharing;

/**
 * Puts freezing, annealing, evacuation, secondary drying and backfill around the steps of primary
 * drying, as the dryer takes them.
 *
 * <p>Source: freezing at least 10 K below the critical temperature, routinely to −40 °C (rule 2.1);
 * ramp 0.5 K/min (2.2); evacuation for 30 min on a cold shelf with the collector cold first (2.8,
 * 2.11); secondary drying 0.1 K/min to 25 °C for 6 h where nothing is known of the cake (2.18);
 * common practice and from memory, see docs/science.md.
 *
 * @param sharing load and dryer
 * @param wishes what was asked
 * @param ramp into primary drying, K/s
 */
record WholeRecipe(Sharing sharing, DesignWishes wishes, double ramp) {

  private static final double LOADING_K = 278.15;
  private static final double ROUTINE_FREEZING_K = 233.15;
  private static final double BELOW_CRITICAL_K = 10;
  private static final double FREEZING_RAMP = 0.5 / 60;
  private static final double EVACUATION_S = 1_800;
  private static final double AFTER_ANNEALING_S = 3_600;
  private static final double THUMB_SECONDARY_K = 298.15;
  private static final double THUMB_SECONDARY_RAMP = 0.1 / 60;
  private static final double THUMB_SECONDARY_S = 6 * 3600;
  private static final double SLOWEST_SECONDARY_RAMP = 0.01 / 60;
  private static final double BACKFILL_S = 600;
  private static final double STEP_S = 600;

  /** Shelf temperature of the frozen load, K. */
  double frozenShelf() {
    double critical =
        items().stream()
            .mapToDouble(item -> item.product().critical().temperature().best())
            .min()
            .orElseThrow();
    double wanted = Math.min(ROUTINE_FREEZING_K, critical - BELOW_CRITICAL_K);
    return shelves().nearest(StepTuner.typed(wanted));
  }

  /** Everything from a loaded dryer to its opening. */
  Recipe recipe(Proposal.Kind kind, List<PrimaryStep> primary) {
    List<RecipeStep> steps = new ArrayList<>(freezing());
    OptionalDouble first = primary.get(0).pressure_Pa();
    steps.add(
        new RecipeStep(RecipePhase.EVACUATION, frozenShelf(), freezingRamp(), first, EVACUATION_S));
    double shelf = frozenShelf();
    for (PrimaryStep step : primary) {
      double way = Math.abs(step.shelf_K() - shelf) / step.ramp_K_per_s();
      steps.add(
          new RecipeStep(
              RecipePhase.PRIMARY_DRYING,
              step.shelf_K(),
              step.ramp_K_per_s(),
              step.pressure_Pa(),
              Math.max(0, step.duration_s() - way)));
      shelf = step.shelf_K();
    }
    steps.add(secondaryStep(shelf, primary.get(primary.size() - 1).pressure_Pa()));
    RecipeStep last = steps.get(steps.size() - 1);
    steps.add(
        new RecipeStep(
            RecipePhase.BACKFILL, last.shelfTarget(), ramp, OptionalDouble.empty(), BACKFILL_S));
    return new Recipe(kind.name().toLowerCase(Locale.ROOT).replace('_', ' '), loading(), steps);
  }

  private List<RecipeStep> freezing() {
    List<RecipeStep> steps = new ArrayList<>();
    double cold = frozenShelf();
    double hold = new FreezingProgram(loading(), cold, freezingRamp()).hold(items());
    steps.add(freezing(cold, hold));
    wishes
        .annealing()
        .ifPresent(
            annealing -> {
              steps.add(freezing(shelves().nearest(annealing.temperature()), annealing.hold()));
              steps.add(freezing(cold, AFTER_ANNEALING_S));
            });
    return steps;
  }

  private RecipeStep freezing(double shelf, double hold) {
    return new RecipeStep(
        RecipePhase.FREEZING, shelf, freezingRamp(), OptionalDouble.empty(), hold);
  }

  /** What came of the wish for secondary drying after a last primary step at that shelf. */
  Optional<SecondaryDesign> secondary(double shelf_K) {
    return wishes
        .secondary()
        .map(
            wish ->
                new SecondaryDesigner()
                    .design(demand(wish, shelf_K), wish.wettest(), wish.slowest(), wish.glass()));
  }

  private SecondaryDemand demand(SecondaryWish wish, double shelf_K) {
    return new SecondaryDemand(
        shelf_K,
        Math.max(shelf_K, shelves().nearest(wish.hold())),
        ramp,
        Math.min(ramp, SLOWEST_SECONDARY_RAMP),
        wish.target(),
        wish.margin());
  }

  /** As designed; where no design exists or none was wished, the cautious rule of the trade. */
  private RecipeStep secondaryStep(double shelf_K, OptionalDouble pressure_Pa) {
    Optional<SecondaryDesign> design = secondary(shelf_K);
    if (design.isPresent() && design.get() instanceof SecondaryDesign.Found found) {
      return new RecipeStep(
          RecipePhase.SECONDARY_DRYING,
          found.program().target(),
          found.program().ramp(),
          pressure_Pa,
          Math.ceil(found.holdTime() / STEP_S) * STEP_S);
    }
    return new RecipeStep(
        RecipePhase.SECONDARY_DRYING,
        Math.max(shelf_K, shelves().nearest(THUMB_SECONDARY_K)),
        Math.min(THUMB_SECONDARY_RAMP, sharing.dryer().shelfRamp()),
        pressure_Pa,
        THUMB_SECONDARY_S);
  }

  private double loading() {
    return shelves().nearest(LOADING_K);
  }

  private double freezingRamp() {
    return Math.min(FREEZING_RAMP, sharing.dryer().shelfRamp());
  }

  private Range shelves() {
    Dryer dryer = sharing.dryer();
    return dryer.shelfTemperature();
  }

  private List<LoadItem> items() {
    return sharing.load().portions().stream().map(portion -> portion.item()).toList();
  }
}
