package org.firnline.review;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.review.signal.Grid;

/**
 * Everything worked out about a run before findings are made of it.
 *
 * @param run the run on its grid
 * @param context what is known beside the log
 * @param vacuum when the chamber is under vacuum; empty if never
 * @param timeline phases as grid points
 * @param ramps changes of the shelf
 * @param ends ends of ice per probed vessel
 * @param ratio the ratio of the two gauges; empty without both
 * @param loadEnds ends of ice of the load
 * @param rises stretches of raised pressure
 * @param riseTests pressure-rise tests among the rises
 * @param faults thermometers that fail
 * @param limit the critical temperature
 * @param excursions above it
 */
record Facts(
    Run run,
    ReviewContext context,
    Optional<Vacuum> vacuum,
    Timeline timeline,
    List<Ramp> ramps,
    List<ThermometerEnds.End> ends,
    Optional<GaugeRatio.Ratio> ratio,
    List<Endpoint> loadEnds,
    List<PressureRise> rises,
    List<RiseTests.RiseTest> riseTests,
    List<SensorFault> faults,
    CriticalTemperature limit,
    List<Excursion> excursions) {
  Facts {
    Objects.requireNonNull(run, "run");
    Objects.requireNonNull(context, "context");
    ramps = List.copyOf(ramps);
    ends = List.copyOf(ends);
    loadEnds = List.copyOf(loadEnds);
    rises = List.copyOf(rises);
    riseTests = List.copyOf(riseTests);
    faults = List.copyOf(faults);
    excursions = List.copyOf(excursions);
  }

  Grid grid() {
    return run.grid();
  }

  /** The load's end of ice by the best method that reached it. */
  Optional<Endpoint> loadEnd() {
    return loadEnds.stream()
        .filter(Endpoint::reached)
        .filter(
            end ->
                end.method() == Endpoint.Method.GAUGE_RATIO_END
                    || end.method() == Endpoint.Method.GAUGE_RATIO_SETTLED
                    || end.method() == Endpoint.Method.PRESSURE_FALL)
        .findFirst();
  }

  /** Evidence in a channel between two grid points. */
  Evidence evidence(String channel, int from, int to, String seen) {
    return new Evidence(channel, grid().instant(from), grid().instant(to), seen);
  }
}
