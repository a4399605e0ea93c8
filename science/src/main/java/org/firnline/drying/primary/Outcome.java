package org.firnline.drying.primary;

/** How primary drying at constant settings ends; never a made-up number. */
public sealed interface Outcome {

  /** Stable word for files and programs. */
  String status();

  /**
   * All ice sublimes.
   *
   * @param time until the last ice is gone, s
   * @param halfIceTime until half of the ice is gone, s
   */
  record Dries(double time, double halfIceTime) implements Outcome {
    @Override
    public String status() {
      return "dries";
    }
  }

  /**
   * The sources are too cold for ice to sublime at this chamber pressure.
   *
   * @param productTemperature at which the vessel settles, K
   */
  record NothingSublimes(double productTemperature) implements Outcome {
    @Override
    public String status() {
      return "no-sublimation";
    }
  }

  /** The chamber pressure lies above the triple point: ice melts before it sublimes. */
  record AboveTriplePoint() implements Outcome {
    @Override
    public String status() {
      return "above-triple-point";
    }
  }

  /**
   * Drying stops part way, because heat from above no longer reaches the front.
   *
   * @param depth at which it stops, m
   */
  record Stalls(double depth) implements Outcome {
    @Override
    public String status() {
      return "stalls";
    }
  }

  /**
   * Ice melts before drying ends.
   *
   * @param depth dried by then, m
   * @param time until then, s
   */
  record Melts(double depth, double time) implements Outcome {
    @Override
    public String status() {
      return "melts";
    }
  }
}
