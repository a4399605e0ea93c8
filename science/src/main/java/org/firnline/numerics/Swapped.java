package org.firnline.numerics;

/**
 * A system in which one dependent variable has changed places with the independent one, so that
 * steps end exactly where that variable reaches a level.
 *
 * <p>Valid: while that variable moves; its slope must not vanish on the way.
 *
 * <p>Source: Hénon, Physica D 5, 412 (1982).
 *
 * @param equations the system as written
 * @param component index of the variable that becomes independent; its place in the state then
 *     holds the old independent variable
 */
public record Swapped(DormandPrince5.Equations equations, int component)
    implements DormandPrince5.Equations {

  @Override
  public void slopes(double at, double[] state, double[] slopes) {
    double old = state[component];
    state[component] = at;
    equations.slopes(old, state, slopes);
    state[component] = old;
    double speed = slopes[component];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] /= speed;
    }
    slopes[component] = 1 / speed;
  }
}
