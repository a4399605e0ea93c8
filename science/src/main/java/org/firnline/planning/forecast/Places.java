package org.firnline.planning.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.firnline.drying.load.ResolvedLoad;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.VialTrajectory;
import org.firnline.lab.LoadItem;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;
import org.firnline.planning.VesselVariation;

/**
 * The places of a load and, at each, which differences make a vessel the last or the warmest: found
 * at one reference setting, where the typical vessel dries below its critical temperature.
 */
record Places(Sharing sharing) {

  private static final double USUAL_MARGIN_K = 3;
  private static final double USUAL_SHARE = 0.25;
  private static final double SHELF_ABOVE_K = 8;

  List<Place> all() {
    List<Place> places = new ArrayList<>();
    List<LoadItem> items = items();
    for (int item = 0; item < items.size(); item++) {
      for (VesselGroup group : groups(items.get(item))) {
        places.add(place(item, group, items.get(item)));
      }
    }
    return List.copyOf(places);
  }

  List<LoadItem> items() {
    return sharing.load().portions().stream().map(portion -> portion.item()).toList();
  }

  private List<VesselGroup> groups(LoadItem item) {
    if (sharing.knownEdge().isPresent()) {
      return ResolvedLoad.groups(item, sharing.knownEdge().get(), sharing.room_K());
    }
    List<VesselGroup> plain = ResolvedLoad.groups(item, sharing.room_K());
    VesselGroup all = plain.get(0);
    double atEdge = Math.round(item.edgeShare() * item.count());
    if (atEdge == 0) {
      return plain;
    }
    double share = atEdge / item.count();
    VesselGroup edge =
        new VesselGroup(
            all.count() * share, all.vessel(), all.heat().times(sharing.variation().edgeFactor()));
    return share == 1
        ? List.of(edge)
        : List.of(new VesselGroup(all.count() * (1 - share), all.vessel(), all.heat()), edge);
  }

  private Place place(int item, VesselGroup group, LoadItem of) {
    int members = Math.max(1, (int) Math.round(group.count()));
    Lean last = lean(group, of, path -> Math.log(path.time()));
    Lean warmest = lean(group, of, path -> path.warmest());
    return new Place(item, group, members, last, warmest);
  }

  private Lean lean(VesselGroup group, LoadItem item, ToDoubleFunction<VialTrajectory> result) {
    VesselVariation spread = sharing.variation();
    double best = result.applyAsDouble(path(group, item, 1, 1, 1));
    double heat = Math.exp(spread.heatTransfer());
    double resistance = Math.exp(spread.resistance());
    return Lean.of(
        result.applyAsDouble(path(group, item, heat, 1, 1)) - best,
        result.applyAsDouble(path(group, item, 1, resistance, 1)) - best,
        result.applyAsDouble(path(group, item, 1, 1, 1 + spread.fill())) - best,
        spread.heatTransfer(),
        spread.resistance(),
        spread.fill());
  }

  private VialTrajectory path(
      VesselGroup group, LoadItem item, double heat, double resistance, double fill) {
    double pressure = referencePressure(item);
    return FastPrimaryDrying.run(
        group.vessel().varied(fill, resistance),
        group.heat().times(heat).at(referenceShelf(item), pressure),
        pressure);
  }

  private double referenceShelf(LoadItem item) {
    double wanted = item.product().critical().temperature().best() + SHELF_ABOVE_K;
    return sharing.dryer().shelves().map(s -> s.temperature().nearest(wanted)).orElse(wanted);
  }

  /** A quarter of the vapor pressure of ice a few kelvin below the critical temperature. */
  private double referencePressure(LoadItem item) {
    double ice = item.product().critical().temperature().best() - USUAL_MARGIN_K;
    double wanted = USUAL_SHARE * new WagnerEtAl2011Ice().pressure(ice);
    double allowed = sharing.dryer().pressureControl().map(r -> r.nearest(wanted)).orElse(wanted);
    return Math.min(allowed, Water.TRIPLE_POINT_PRESSURE / 2);
  }
}
