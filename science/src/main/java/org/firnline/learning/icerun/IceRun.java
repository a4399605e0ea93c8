package org.firnline.learning.icerun;

import java.util.List;
import org.firnline.evidence.Estimate;

/**
 * A weighed ice run of many vessels at one chamber pressure.
 *
 * @param name of the run, for the provenance
 * @param vessel what was weighed, such as 10R
 * @param pressure chamber pressure, Pa; best positive
 * @param time for which ice sublimed, s; best positive
 * @param shelf mean shelf surface temperature over that time, K
 * @param bottom mean temperature of the ice at the bottom of the vessels, K; best below the shelf's
 * @param area A_v: outer bottom area of a vessel, m2; best positive
 * @param iceAtStart ice in a vessel at the start, kg; positive
 * @param balance what weighed them
 * @param vessels at least one
 */
public record IceRun(
    String name,
    String vessel,
    Estimate pressure,
    Estimate time,
    Estimate shelf,
    Estimate bottom,
    Estimate area,
    double iceAtStart,
    Balance balance,
    List<WeighedVessel> vessels) {

  public IceRun {
    vessels = List.copyOf(vessels);
    if (!(pressure.best() > 0) || !(time.best() > 0) || !(area.best() > 0)) {
      throw new IllegalArgumentException("pressure, time and area must be positive");
    }
    if (!(shelf.best() > bottom.best())) {
      throw new IllegalArgumentException(
          "the shelf at "
              + shelf.best()
              + " K is not warmer than the ice at "
              + bottom.best()
              + " K, so no heat came from it");
    }
    if (vessels.isEmpty()) {
      throw new IllegalArgumentException("no vessel was weighed");
    }
    for (WeighedVessel weighed : vessels) {
      if (!(weighed.loss() <= iceAtStart)) {
        throw new IllegalArgumentException(
            "vessel "
                + weighed.name()
                + " lost "
                + weighed.loss()
                + " kg of "
                + iceAtStart
                + " kg of ice");
      }
    }
  }

  /** Shelf minus bottom, K. */
  public double drive() {
    return shelf.best() - bottom.best();
  }
}
