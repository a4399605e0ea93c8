package org.firnline.planning;

import java.util.Optional;

/**
 * Answers a plan question: settings, what they are expected to do, and what was checked.
 *
 * <p>Quasi-steady primary drying at one hold (docs/science.md); doubt to first order. It does not
 * say that a run is safe: it says what was looked at.
 */
public final class Planner {

  private final VesselVariation variation;

  /** With the usual differences between vessels. */
  public Planner() {
    this(VesselVariation.USUAL);
  }

  public Planner(VesselVariation variation) {
    this.variation = variation;
  }

  /**
   * The wanted hold if there is one, else the fastest that keeps its limits, else the mildest the
   * dryer can do, with the lines that stop it.
   */
  public PlanAnswer answer(PlanQuestion question) {
    LoadForecast forecast = new LoadForecast(question.load(), variation);
    Optional<Hold> found =
        question.wanted().isPresent()
            ? question.wanted()
            : new HoldFinder(question.dryer(), forecast).find();
    Hold hold = found.orElseGet(() -> mildest(question));
    Prediction prediction = new Forecasts(question.load(), forecast).at(hold);
    CheckList checks = new CheckList(question, hold, prediction, forecast.warmest(hold));
    return new PlanAnswer(question, hold, question.wanted().isEmpty(), prediction, checks.lines());
  }

  /**
   * The window map of a question.
   *
   * @param columns pressures; 2 or more
   * @param rows shelf temperatures; 2 or more
   */
  public WindowMap map(PlanQuestion question, int columns, int rows) {
    return new WindowMapper(question, new LoadForecast(question.load(), variation))
        .draw(columns, rows);
  }

  private static Hold mildest(PlanQuestion question) {
    return new Hold(question.dryer().shelfTemperature().low(), question.dryer().pressure().low());
  }
}
