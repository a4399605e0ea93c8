package org.firnline.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.firnline.evidence.Band;
import org.firnline.lab.LoadItem;
import org.firnline.numerics.Normal;

/** Puts together the prediction of one hold. */
final class Forecasts {

  private static final int POINTS = 61;
  private static final double NINE_IN_TEN = Normal.quantile(0.95);

  private final LoadItem item;
  private final LoadForecast forecast;

  Forecasts(LoadItem item, LoadForecast forecast) {
    this.item = item;
    this.forecast = forecast;
  }

  Prediction at(Hold hold) {
    LoadForecast.WarmestPoint warmest = forecast.warmest(hold);
    Band typical = forecast.typicalTime(hold);
    return new Prediction(
        typical,
        forecast.lastTime(hold),
        warmest.band(),
        warmest.risk(),
        forecast.peakRate(hold),
        forecast.shareOfDoubt(hold),
        Double.isFinite(typical.best()) ? points(hold) : List.of());
  }

  private List<PredictedPoint> points(Hold hold) {
    Sensitivity.Spreads spreads = forecast.runSpreads();
    VialCase typical = forecast.typical();
    RunCurve best = RunCurve.of(typical, hold);
    RunCurve edge = RunCurve.of(forecast.warmestPlace(), hold);
    List<Optional<RunCurve>> around =
        List.of(
            curve(typical.warmedBy(Math.exp(spreads.heat())), hold),
            curve(typical.warmedBy(Math.exp(-spreads.heat())), hold),
            curve(typical.hinderedBy(Math.exp(spreads.resistance())), hold),
            curve(typical.hinderedBy(Math.exp(-spreads.resistance())), hold));
    double share = item.edgeShare();
    List<PredictedPoint> points = new ArrayList<>(POINTS);
    for (double time : RunCurve.timesUntil(best.end(), POINTS)) {
      double rate = item.count() * ((1 - share) * best.rateAt(time) + share * edge.rateAt(time));
      points.add(
          new PredictedPoint(
              time,
              band(best, around, curve -> curve.warmestAt(time)),
              limited(band(best, around, curve -> curve.driedAt(time))),
              rate));
    }
    return points;
  }

  private static Optional<RunCurve> curve(VialCase vial, Hold hold) {
    return vial.trajectory(hold).dries() ? Optional.of(RunCurve.of(vial, hold)) : Optional.empty();
  }

  private static Band band(
      RunCurve best, List<Optional<RunCurve>> around, ToDoubleFunction<RunCurve> quantity) {
    double middle = quantity.applyAsDouble(best);
    double rise = 0;
    double fall = 0;
    for (int pair = 0; pair < around.size(); pair += 2) {
      double up = around.get(pair).map(quantity::applyAsDouble).orElse(middle) - middle;
      double down = around.get(pair + 1).map(quantity::applyAsDouble).orElse(middle) - middle;
      var change = new Sensitivity.Change(up, down);
      rise = Math.hypot(rise, change.rise());
      fall = Math.hypot(fall, change.fall());
    }
    return new Band(middle - NINE_IN_TEN * fall, middle, middle + NINE_IN_TEN * rise);
  }

  private static Band limited(Band share) {
    return new Band(Math.max(0, share.low()), share.best(), Math.min(1, share.high()));
  }
}
