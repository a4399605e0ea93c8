package org.firnline.planning.design;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Source;
import org.firnline.lab.Recipe;
import org.firnline.planning.forecast.LoadOutlook;

/**
 * One way to dry the load, as simulated.
 *
 * @param kind what it is
 * @param steps of primary drying; none on a dryer with nothing to set
 * @param recipe everything from freezing to backfill; empty where the dryer takes no recipe, and
 *     for the ideal
 * @param outlook what the same simulation says of exactly these steps
 * @param source where a rule of thumb comes from; empty for what was computed
 */
public record Proposal(
    Kind kind,
    List<PrimaryStep> steps,
    Optional<Recipe> recipe,
    LoadOutlook outlook,
    Optional<Source> source) {

  /** What is shown side by side. */
  public enum Kind {
    /** At most as many steps as the programmer takes. */
    DESIGNED,
    /** One shelf temperature and one pressure. */
    ONE_HOLD,
    /** Best at every moment; no dryer can be told this. */
    IDEAL,
    /** What is done without a model. */
    RULE_OF_THUMB,
    /** What the dryer does with nothing to set. */
    AS_IT_RUNS
  }

  public Proposal {
    steps = List.copyOf(steps);
  }

  /** Middle of the time until the last vessel is dry, s. */
  public double time_s() {
    return outlook.lastTime_s().best();
  }
}
