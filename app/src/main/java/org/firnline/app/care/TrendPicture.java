package org.firnline.app.care;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.care.CarePoint;
import org.firnline.care.ControlChart;

/**
 * A small picture of one figure over time, as the coordinates of its drawing, 260 wide and 72 high.
 *
 * @param dots a path of one stroke for each run
 * @param line the moving average
 * @param bandTop upper limit of what is usual
 * @param bandHeight height between the limits
 * @param change where the change begins; empty if there is none
 */
public record TrendPicture(
    String dots, String line, double bandTop, double bandHeight, Optional<Double> change) {

  private static final double WIDTH = 260;
  private static final double HEIGHT = 72;
  private static final double MARGIN = 4;

  /** The picture of a chart. */
  public static TrendPicture of(ControlChart chart) {
    List<CarePoint> points = chart.points();
    double low = chart.baseline().mean() - chart.reach();
    double high = chart.baseline().mean() + chart.reach();
    double least = low;
    double most = high;
    for (CarePoint point : points) {
      least = Math.min(least, point.value());
      most = Math.max(most, point.value());
    }
    Frame frame = new Frame(points.get(0).at(), points.get(points.size() - 1).at(), least, most);
    StringBuilder dots = new StringBuilder();
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < points.size(); i++) {
      double x = frame.x(points.get(i).at());
      dots.append('M').append(text(x)).append(' ');
      dots.append(text(frame.y(points.get(i).value()))).append("h0");
      line.append(i == 0 ? 'M' : 'L').append(text(x)).append(' ');
      line.append(text(frame.y(chart.averages().get(i))));
    }
    return new TrendPicture(
        dots.toString(),
        line.toString(),
        round(frame.y(high)),
        round(frame.y(low) - frame.y(high)),
        chart.change().map(change -> round(frame.x(change.since()))));
  }

  private static double round(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static String text(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** From times and values to places. */
  private record Frame(Instant from, Instant to, double least, double most) {

    double x(Instant at) {
      double whole = Math.max(1, Duration.between(from, to).toSeconds());
      double share = Duration.between(from, at).toSeconds() / whole;
      return MARGIN + share * (WIDTH - 2 * MARGIN);
    }

    double y(double value) {
      double whole = most > least ? most - least : 1;
      return HEIGHT - MARGIN - (value - least) / whole * (HEIGHT - 2 * MARGIN);
    }
  }
}
