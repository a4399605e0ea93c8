package org.firnline.care;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One figure of one dryer over its runs: what is usual, the moving average, and whether and since
 * when it has changed.
 *
 * @param figure which
 * @param points in time order
 * @param baseline what is usual; from the first runs
 * @param averages the moving average at each point
 * @param reach half the distance between the limits of the average
 * @param change a change that lasts until now
 */
public record ControlChart(
    CareFigure figure,
    List<CarePoint> points,
    Baseline baseline,
    List<Double> averages,
    double reach,
    Optional<Change> change) {

  /** Runs that say what is usual. */
  private static final int BASELINE_RUNS = 24;

  private static final int LEAST_RUNS = 8;

  /** A figure that never scatters still has digits; so small a share of the mean is no change. */
  private static final double SMALLEST_SHARE = 0.002;

  /**
   * A lasting change.
   *
   * @param since the run from which on the values pile up on one side
   * @param seen the run at which it was certain
   * @param upward whether the figure rose
   * @param size mean since then minus the usual mean, SI
   * @param worse whether it is a change for the worse
   */
  public record Change(Instant since, Instant seen, boolean upward, double size, boolean worse) {}

  public ControlChart {
    points = List.copyOf(points);
    averages = List.copyOf(averages);
  }

  /**
   * The chart of {@code points}.
   *
   * @param points of one figure in time order
   * @return empty with fewer than eight runs
   */
  public static Optional<ControlChart> of(CareFigure figure, List<CarePoint> points) {
    if (points.size() < LEAST_RUNS) {
      return Optional.empty();
    }
    List<Double> values = points.stream().map(CarePoint::value).toList();
    int first = Math.max(LEAST_RUNS / 2, Math.min(BASELINE_RUNS, values.size() / 2));
    Baseline found = Baseline.of(values, first);
    double floor = SMALLEST_SHARE * Math.abs(found.mean());
    Baseline usual = new Baseline(found.mean(), Math.max(floor, found.deviation()), found.count());
    List<Double> averages = Ewma.USUAL.averages(values, usual.mean());
    double reach = Ewma.USUAL.reach(usual.deviation());
    double off = averages.get(averages.size() - 1) - usual.mean();
    return Optional.of(
        new ControlChart(
            figure,
            points,
            usual,
            averages,
            reach,
            Math.abs(off) > reach
                ? change(figure, points, values, usual).filter(change -> change.upward() == off > 0)
                : Optional.empty()));
  }

  /** Whether the moving average stands outside its limits now. */
  public boolean isOutNow() {
    double last = averages.get(averages.size() - 1);
    return Math.abs(last - baseline.mean()) > reach;
  }

  /**
   * A change that lasts until now: one sum stands beyond its decision and the moving average
   * agrees. It began where that sum last left zero. A change that went back again is not told.
   */
  private static Optional<Change> change(
      CareFigure figure, List<CarePoint> points, List<Double> values, Baseline usual) {
    double ofMean = usual.deviation() / Math.sqrt(usual.count());
    Cusum textbook = Cusum.usual(usual.deviation());
    Cusum cusum = new Cusum(textbook.allowance() + ofMean, textbook.decision());
    List<Cusum.Sums> sums = cusum.sums(values, usual.mean());
    int last = sums.size() - 1;
    boolean upward = sums.get(last).high() > cusum.decision();
    if (!upward && !(sums.get(last).low() > cusum.decision())) {
      return Optional.empty();
    }
    int since = last;
    while (since > 0 && sum(sums.get(since - 1), upward) > 0) {
      since--;
    }
    int seen = since;
    while (!(sum(sums.get(seen), upward) > cusum.decision())) {
      seen++;
    }
    double mean =
        values.subList(since, values.size()).stream()
            .mapToDouble(Double::doubleValue)
            .average()
            .orElseThrow();
    return Optional.of(
        new Change(
            points.get(since).at(),
            points.get(seen).at(),
            upward,
            mean - usual.mean(),
            isWorse(figure, upward)));
  }

  private static double sum(Cusum.Sums sums, boolean upward) {
    return upward ? sums.high() : sums.low();
  }

  private static boolean isWorse(CareFigure figure, boolean upward) {
    return figure.worse() == CareFigure.Worse.EITHER
        || (figure.worse() == CareFigure.Worse.HIGHER) == upward;
  }
}
