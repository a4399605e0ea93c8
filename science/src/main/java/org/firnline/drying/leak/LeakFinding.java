package org.firnline.drying.leak;

import java.util.function.Function;
import org.firnline.evidence.Estimate;

/** What a leak test tells; where two causes cannot be told apart it says so. */
public sealed interface LeakFinding {

  /** The answer of the function that fits this finding. */
  <T> T fold(
      Function<Steady, T> steady,
      Function<LeakAndOutgassing, T> both,
      Function<CannotTell, T> cannot);

  /**
   * A steady rise: a leak, or walls that give off gas so slowly that the test does not show it.
   *
   * @param leak Q = V dP/dt, Pa m3/s
   * @param start pressure at the beginning, Pa
   */
  record Steady(Estimate leak, Estimate start) implements LeakFinding {

    @Override
    public <T> T fold(
        Function<Steady, T> steady,
        Function<LeakAndOutgassing, T> both,
        Function<CannotTell, T> cannot) {
      return steady.apply(this);
    }
  }

  /**
   * A bending rise that ends straight.
   *
   * @param leak what is left when the bend is over, Pa m3/s
   * @param outgassing rise that the walls give in the end, Pa
   * @param fading time in which outgassing falls to 1/e, s
   * @param start pressure at the beginning, Pa
   */
  record LeakAndOutgassing(Estimate leak, Estimate outgassing, Estimate fading, Estimate start)
      implements LeakFinding {

    @Override
    public <T> T fold(
        Function<Steady, T> steady,
        Function<LeakAndOutgassing, T> both,
        Function<CannotTell, T> cannot) {
      return both.apply(this);
    }
  }

  /**
   * The bend is slower than the test, so that part of the rise may be either.
   *
   * @param greatestLeak the last slope taken all as leak, Pa m3/s
   * @param reason why no more can be said
   */
  record CannotTell(double greatestLeak, String reason) implements LeakFinding {

    @Override
    public <T> T fold(
        Function<Steady, T> steady,
        Function<LeakAndOutgassing, T> both,
        Function<CannotTell, T> cannot) {
      return cannot.apply(this);
    }
  }
}
