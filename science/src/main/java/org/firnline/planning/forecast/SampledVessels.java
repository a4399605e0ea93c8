package org.firnline.planning.forecast;

import java.util.List;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSource;
import org.firnline.evidence.Estimate;
import org.firnline.lab.Flask;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Piece;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.firnline.lab.Vial;

/**
 * The vessels that stand for a load in one possible truth: at each place the typical one, which
 * counts for all there, the last and the warmest. Plain arrays for the hot loop.
 */
final class SampledVessels {

  /** Typical, last and warmest. */
  static final int KINDS = 3;

  private final DryingVessel[] vessels;
  private final HeatSource[] heats;
  private final double[] counts;
  private final int[] owners;
  private final double[] limits;

  private SampledVessels(int size, double... limits) {
    this.vessels = new DryingVessel[size];
    this.heats = new HeatSource[size];
    this.counts = new double[size];
    this.owners = new int[size];
    this.limits = limits;
  }

  static SampledVessels of(List<Place> places, List<LoadItem> items, RunDraw draw) {
    SampledVessels made = new SampledVessels(places.size() * KINDS, limits(items, draw));
    for (int place = 0; place < places.size(); place++) {
      made.fill(place, places.get(place), items, draw);
    }
    return made;
  }

  private void fill(int number, Place place, List<LoadItem> items, RunDraw draw) {
    LoadItem item = items.get(place.item());
    double heat = factor(heatTransfer(item.vessel()), draw.heat());
    double cake = factor(item.product().resistanceFactor(), draw.resistance().get(place.item()));
    double last = RunDraw.extreme(draw.lastShare(), place.members());
    double warmest = RunDraw.extreme(draw.warmestShare(), place.members());
    put(number * KINDS, place, heat, cake, Lean.NONE, 0);
    counts[number * KINDS] = place.group().count();
    put(number * KINDS + 1, place, heat, cake, place.last(), last);
    put(number * KINDS + 2, place, heat, cake, place.warmest(), warmest);
  }

  private void put(int at, Place place, double heat, double cake, Lean lean, double deviate) {
    vessels[at] =
        place
            .group()
            .vessel()
            .varied(lean.fillFactor(deviate), cake * lean.resistanceFactor(deviate));
    heats[at] = place.group().heat().times(heat * lean.heatFactor(deviate));
    owners[at] = place.item();
  }

  private static double[] limits(List<LoadItem> items, RunDraw draw) {
    double[] limits = new double[items.size()];
    for (int item = 0; item < limits.length; item++) {
      limits[item] =
          items.get(item).product().critical().temperature().shifted(draw.critical().get(item));
    }
    return limits;
  }

  /** The best value is already in the vessel; only the doubt about it is drawn. */
  private static double factor(Estimate estimate, double deviate) {
    return Math.exp(estimate.spread() / estimate.best() * deviate);
  }

  /** What is not known about the heat that a vessel of this kind gets. */
  static Estimate heatTransfer(Vessel vessel) {
    return vessel.fold(
        new Vessel.Cases<Estimate>() {
          @Override
          public Estimate vial(Vial vial) {
            return vial.heatTransferFactor();
          }

          @Override
          public Estimate tray(Tray tray) {
            return tray.heatTransferFactor();
          }

          @Override
          public Estimate flask(Flask flask) {
            return flask.roomHeatTransfer();
          }

          @Override
          public Estimate piece(Piece piece) {
            return piece.heat().coefficient();
          }
        });
  }

  DryingVessel vessel(int at) {
    return vessels[at];
  }

  HeatSource heat(int at) {
    return heats[at];
  }

  /** How many vessels this one stands for in the vapor of the load; 0 for extremes. */
  double count(int at) {
    return counts[at];
  }

  /** Number of the item that it belongs to. */
  int item(int at) {
    return owners[at];
  }

  /** Critical temperature of its item in this truth, K. */
  double limit(int at) {
    return limits[owners[at]];
  }

  int items() {
    return limits.length;
  }

  double limitOfItem(int item) {
    return limits[item];
  }

  int size() {
    return vessels.length;
  }

  boolean isTypical(int vessel) {
    return vessel % KINDS == 0;
  }
}
