package org.firnline.planning.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.drying.secondary.SecondaryDesign;
import org.firnline.evidence.Source;
import org.firnline.lab.Dryer;
import org.firnline.lab.Recipe;
import org.firnline.planning.design.StepTuner.Tried;
import org.firnline.planning.forecast.DryingProgram;
import org.firnline.planning.forecast.LoadForecaster;
import org.firnline.planning.forecast.LoadOutlook;
import org.firnline.planning.forecast.Sharing;

/**
 * Finds the recipe for a load on a dryer and sets it beside the plain hold, the ideal and the rule
 * of thumb. Every proposal carries what the same forecast says of exactly the settings shown.
 *
 * <p>On a dryer without shelves or without pressure control there is nothing to design: what the
 * dryer does by itself is forecast and shown.
 */
public final class RecipeDesigner {

  /** Usual ramp into primary drying is 0.5 to 1 K/min (from memory). */
  private static final double USUAL_RAMP = 1.0 / 60;

  private static final double DURATION_STEP_S = 600;

  private final Sharing sharing;
  private final DesignWishes wishes;
  private final LoadForecaster forecaster;

  public RecipeDesigner(Sharing sharing, DesignWishes wishes) {
    this.sharing = sharing;
    this.wishes = wishes;
    this.forecaster = new LoadForecaster(sharing);
  }

  /** The recipe and what stands beside it. */
  public RecipeDesign design() {
    Dryer dryer = sharing.dryer();
    if (dryer.shelves().isEmpty() || dryer.pressureControl().isEmpty()) {
      return new RecipeDesign(List.of(asItRuns()), wishes, Optional.empty());
    }
    double ramp = Math.min(USUAL_RAMP, dryer.shelfRamp());
    WholeRecipe whole = new WholeRecipe(sharing, wishes, ramp);
    double start = whole.frozenShelf();
    PrimaryDesigner.Found found = new PrimaryDesigner(forecaster, wishes, start, ramp).find();
    List<Proposal> proposals = new ArrayList<>();
    found.designed().ifPresent(t -> proposals.add(proposal(Proposal.Kind.DESIGNED, t, whole)));
    found.hold().ifPresent(t -> proposals.add(proposal(Proposal.Kind.ONE_HOLD, t, whole)));
    found.ideal().ifPresent(t -> proposals.add(ideal(t)));
    proposals.add(ruleOfThumb(start, ramp, whole));
    Optional<SecondaryDesign> secondary =
        proposals.get(0).steps().isEmpty()
            ? Optional.empty()
            : whole.secondary(lastShelf(proposals.get(0)));
    return new RecipeDesign(proposals, wishes, secondary);
  }

  private static double lastShelf(Proposal proposal) {
    return proposal.steps().get(proposal.steps().size() - 1).shelf_K();
  }

  private Proposal ruleOfThumb(double start, double ramp, WholeRecipe whole) {
    DryingProgram program = new RuleOfThumb(sharing).program(start, ramp);
    Tried tried = new Tried(program, forecaster.run(program));
    Proposal plain = proposal(Proposal.Kind.RULE_OF_THUMB, tried, whole);
    return with(plain, RuleOfThumb.SOURCE);
  }

  private static Proposal with(Proposal plain, Source source) {
    return new Proposal(
        plain.kind(), plain.steps(), plain.recipe(), plain.outlook(), Optional.of(source));
  }

  private Proposal proposal(Proposal.Kind kind, Tried tried, WholeRecipe whole) {
    LoadOutlook outlook = tried.sampled().outlook();
    List<PrimaryStep> steps = steps(tried.program(), outlook);
    Optional<Recipe> recipe =
        Double.isFinite(outlook.lastTime_s().high())
            ? Optional.of(whole.recipe(kind, steps))
            : Optional.empty();
    return new Proposal(kind, steps, recipe, outlook, Optional.empty());
  }

  private Proposal ideal(Tried tried) {
    LoadOutlook outlook = tried.sampled().outlook();
    return new Proposal(
        Proposal.Kind.IDEAL,
        steps(tried.program(), outlook),
        Optional.empty(),
        outlook,
        Optional.empty());
  }

  /** The last step lasts to the upper end of the band. */
  private static List<PrimaryStep> steps(DryingProgram program, LoadOutlook outlook) {
    List<PrimaryStep> steps = new ArrayList<>();
    double time = 0;
    for (DryingProgram.Leg leg : program.legs()) {
      double lasts = leg.duration_s();
      if (Double.isInfinite(lasts)) {
        double left = Math.max(DURATION_STEP_S, outlook.lastTime_s().high() - time);
        lasts = Math.ceil(left / DURATION_STEP_S) * DURATION_STEP_S;
      }
      steps.add(new PrimaryStep(leg.shelf_K(), leg.pressure_Pa(), program.ramp(), lasts));
      time += lasts;
    }
    return steps;
  }

  /** A manifold in room air, or shelves on which the pressure floats: kept just below the limit. */
  private Proposal asItRuns() {
    Dryer dryer = sharing.dryer();
    double shelf = dryer.shelves().map(s -> s.temperature().low()).orElse(sharing.room_K());
    OptionalDouble pressure =
        dryer.pressureControl().map(r -> OptionalDouble.of(r.low())).orElse(OptionalDouble.empty());
    DryingProgram program =
        new DryingProgram(
            shelf, 1, List.of(new DryingProgram.Leg(shelf, pressure, Double.POSITIVE_INFINITY)));
    if (dryer.shelves().isPresent()) {
      StepTuner tuner = new StepTuner(forecaster, wishes.risk());
      program = tuner.tune(program).map(Tried::program).orElse(program);
    }
    Tried tried = new Tried(program, forecaster.run(program));
    LoadOutlook outlook = tried.sampled().outlook();
    List<PrimaryStep> steps =
        dryer.shelves().isPresent() || pressure.isPresent() ? steps(program, outlook) : List.of();
    return new Proposal(
        Proposal.Kind.AS_IT_RUNS, steps, Optional.empty(), outlook, Optional.empty());
  }
}
