package org.firnline.drying.load;

/** How a load at constant settings ends. */
public sealed interface LoadOutcome {

  /** Stable word for files and programs. */
  String status();

  /**
   * All ice of all vessels sublimes.
   *
   * @param time until the last ice is gone, s
   */
  record Dries(double time) implements LoadOutcome {
    @Override
    public String status() {
      return "dries";
    }
  }

  /** No vessel gets enough heat to sublime at this pressure, or none any more. */
  record NothingSublimes() implements LoadOutcome {
    @Override
    public String status() {
      return "no-sublimation";
    }
  }

  /** Shelf and set point lie where ice melts at once. */
  record AboveTriplePoint() implements LoadOutcome {
    @Override
    public String status() {
      return "above-triple-point";
    }
  }

  /**
   * Ice melts in some vessel.
   *
   * @param time when, s
   */
  record Melts(double time) implements LoadOutcome {
    @Override
    public String status() {
      return "melts";
    }
  }

  /**
   * The dryer carries the load at no pressure below the triple point.
   *
   * @param time when that happens, s
   */
  record Overloaded(double time) implements LoadOutcome {
    @Override
    public String status() {
      return "overloaded";
    }
  }
}
