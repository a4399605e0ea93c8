package org.firnline.bench;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Stops an integrator of Hipparchus where its first component, a dried share, reaches 1. */
final class LastIce implements ODEEventDetector {
  private static final double CHECK_EVERY_S = 7_200;
  private static final double LOCATED_S = 1e-6;
  private static final int MOST_ITERATIONS = 200;

  @Override
  public AdaptableInterval getMaxCheckInterval() {
    return AdaptableInterval.of(CHECK_EVERY_S);
  }

  @Override
  public int getMaxIterationCount() {
    return MOST_ITERATIONS;
  }

  @Override
  public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
    return new BracketingNthOrderBrentSolver(0, LOCATED_S, 0, 5);
  }

  @Override
  public ODEEventHandler getHandler() {
    return (state, detector, rises) -> Action.STOP;
  }

  @Override
  public double g(ODEStateAndDerivative state) {
    return state.getPrimaryState()[0] - 1;
  }
}
