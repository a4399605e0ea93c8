package org.firnline.planning.point;

import java.util.Optional;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.LoadMoment;
import org.firnline.numerics.Peak;
import org.firnline.numerics.Threshold;

/**
 * Finds the shelf temperature and chamber pressure at which a load, dried to a given share, gives
 * off most vapor within its limits.
 *
 * <p>At a given pressure rate and temperatures rise with the shelf, so the warmest shelf allowed is
 * best there; pressures are then searched along their logarithm. The optimum is flat: compare
 * rates, not settings.
 *
 * @param load what dries
 * @param driedShare share of the ice gone in every vessel, 0 to 1
 * @param limits what settings must respect
 */
public record BestPointSearch(DryingLoad load, double driedShare, PointLimits limits) {

  private static final int PRESSURES = 48;

  /** The best point; empty if even the coldest shelf is too warm at every pressure. */
  public Optional<BestPoint> find() {
    double low = Math.log(limits.pressure().low());
    double high = Math.log(limits.pressure().high());
    double step = (high - low) / PRESSURES;
    double best = low;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int sample = 0; sample <= PRESSURES; sample++) {
      double logarithm = low + sample * step;
      double rate = rateAt(logarithm);
      if (rate > greatest) {
        greatest = rate;
        best = logarithm;
      }
    }
    if (step > 0 && greatest > 0) {
      double from = Math.max(low, best - step);
      double to = Math.min(high, best + step);
      double refined = Peak.location(this::rateAt, from, to);
      best = rateAt(refined) > greatest ? refined : best;
    }
    return at(pressure(best));
  }

  /** The best shelf at {@code pressure_Pa}; empty if even the coldest shelf is too warm. */
  public Optional<BestPoint> at(double pressure_Pa) {
    double coldest = limits.shelf().low();
    double hottest = limits.shelf().high();
    if (!isAllowed(coldest, pressure_Pa)) {
      return Optional.empty();
    }
    if (isAllowed(hottest, pressure_Pa)) {
      return Optional.of(point(hottest, pressure_Pa, BestPoint.Limit.SHELF));
    }
    double tooHot = Threshold.of(shelf -> !isAllowed(shelf, pressure_Pa), coldest, hottest);
    BestPoint.Limit limit =
        isCool(moment(tooHot), pressure_Pa) ? BestPoint.Limit.DRYER : BestPoint.Limit.PRODUCT;
    double shelf = Math.max(coldest, Math.nextDown(tooHot));
    return Optional.of(point(shelf, pressure_Pa, limit));
  }

  private double pressure(double logarithm) {
    return limits.pressure().nearest(Math.exp(logarithm));
  }

  private double rateAt(double logarithm) {
    return at(pressure(logarithm)).map(BestPoint::totalRate).orElse(Double.NEGATIVE_INFINITY);
  }

  private LoadMoment moment(double shelf_K) {
    return LoadMoment.dried(load, shelf_K, driedShare);
  }

  private boolean isAllowed(double shelf_K, double pressure_Pa) {
    LoadMoment moment = moment(shelf_K);
    return isCool(moment, pressure_Pa)
        && moment.totalRate(pressure_Pa) <= limits.path().rate(pressure_Pa);
  }

  private boolean isCool(LoadMoment moment, double pressure_Pa) {
    return moment.warmest(pressure_Pa) <= limits.warmest();
  }

  private BestPoint point(double shelf_K, double pressure_Pa, BestPoint.Limit limit) {
    LoadMoment moment = moment(shelf_K);
    return new BestPoint(
        shelf_K, pressure_Pa, moment.totalRate(pressure_Pa), moment.warmest(pressure_Pa), limit);
  }
}
