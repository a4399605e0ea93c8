package org.firnline.care;

import java.time.Instant;
import java.util.ArrayList;
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
 * @param change the first lasting change
 */
public record ControlChart(
    CareFigure figure,
    List<CarePoint> points,
    Baseline baseline,
    List<Double> averages,
    double reach,
    Optional<Change> change) {

  /** Runs that say what is usual. */
  private static final int BASELINE_RUNS = 12;

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
  public record Change(
      Instant since, Instant seen, boolean upward, double size, boolean worse) {}

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
    Baseline usual =
        new Baseline(found.mean(), Math.max(floor, found.deviation()), found.count());
    return Optional.of(
        new ControlChart(
            figure,
            points,
            usual,
            Ewma.USUAL.averages(values, usual.mean()),
            Ewma.USUAL.reach(usual.deviation()),
            change(figure, points, values, usual)));
  }

  /** Whether the moving average stands outside its limits now. */
  public boolean isOutNow() {
    double last = averages.get(averages.size() - 1);
    return Math.abs(last - baseline.mean()) > reach;
  }

  private static Optional<Change> change(
      CareFigure figure, List<CarePoint> points, List<Double> values, Baseline usual) {
    Cusum cusum = Cusum.usual(usual.deviation());
    List<Cusum.Sums> sums = cusum.sums(values, usual.mean());
    for (int i = 0; i < sums.size(); i++) {
      boolean upward = sums.get(i).high() > cusum.decision();
      boolean downward = sums.get(i).low() > cusum.decision();
      if (upward || downward) {
        int since = i;
        while (since > 0 && sum(sums.get(since - 1), upward) > 0) {
          since--;
        }
        double after = 0;
        List<Double> tail = new ArrayList<>(values.subList(since, values.size()));
        for (double value : tail) {
          after += value / tail.size();
        }
        return Optional.of(
            new Change(
                points.get(since).at(),
                points.get(i).at(),
                upward,
                after - usual.mean(),
                isWorse(figure, upward)));
      }
    }
    return Optional.empty();
  }

  private static double sum(Cusum.Sums sums, boolean upward) {
    return upward ? sums.high() : sums.low();
  }

  private static boolean isWorse(CareFigure figure, boolean upward) {
    return figure.worse() == CareFigure.Worse.EITHER
        || (figure.worse() == CareFigure.Worse.HIGHER) == upward;
  }
}
