package org.firnline.planning.together;

import java.util.Optional;
import org.firnline.evidence.Band;
import org.firnline.planning.forecast.ItemForecast;

/**
 * One item of a shared run, beside what it would be alone on the same dryer.
 *
 * @param together what the shared recipe does to it
 * @param alone_s time until its last vessel is dry in the best recipe for it alone; empty where no
 *     setting keeps its risk
 * @param waits_s how long it stands dry until the last item is, s; 0 for the item that rules the
 *     time
 */
public record ItemAlone(ItemForecast together, Optional<Band> alone_s, double waits_s) {

  /**
   * What it would gain alone over the end of the shared run, s; empty where it cannot run alone.
   */
  public Optional<Double> gain_s() {
    return alone_s.map(alone -> together.lastTime_s().best() + waits_s - alone.best());
  }
}
