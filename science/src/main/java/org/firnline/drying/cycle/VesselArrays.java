package org.firnline.drying.cycle;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;

/**
 * The vessels of a load in plain arrays: their shape and what changes. Only the steps of this
 * package write to it. Slabs are answered from the arrays, other shapes by their geometry.
 */
final class VesselArrays {

  static final byte LIQUID = 0;
  static final byte FREEZING = 1;
  static final byte FROZEN = 2;
  static final byte DRY = 3;

  final int size;
  final CycleVessel[] vessels;
  final HeatArrays heat;

  final double[] count;
  final double[] thickness;
  final double[] mouth;
  final CakeResistance[] cake;
  final double[] glassCapacity;
  final double[] frozenCapacity;

  private final boolean[] slab;
  private final double[] productArea;
  private final double[] iceAlong;
  private final double[] layerAlong;

  final byte[] stage;
  final double[] bottom;
  final double[] front;
  final double[] depth;
  final double[] moisture;
  final double[] rate;
  final double[] annealed;
  final double[] limit;

  final VesselRecords records;

  VesselArrays(List<CycleVessel> load, double start_K) {
    size = load.size();
    vessels = load.toArray(CycleVessel[]::new);
    heat = new HeatArrays(load);
    count = each(CycleVessel::count);
    thickness = each(v -> v.vessel().geometry().thickness());
    mouth = each(v -> v.vessel().mouthResistance());
    cake = load.stream().map(v -> v.vessel().cake()).toArray(CakeResistance[]::new);
    glassCapacity = each(v -> v.mass().vessel());
    frozenCapacity = each(v -> v.mass().frozen());
    slab = new boolean[size];
    stage = new byte[size];
    for (int i = 0; i < size; i++) {
      slab[i] = vessels[i].vessel().geometry() instanceof Slab;
      stage[i] = vessels[i].freezing().isPresent() ? LIQUID : FROZEN;
    }
    productArea = each(v -> v.vessel().geometry().surfaceArea());
    iceAlong = each(v -> v.vessel().geometry().icePerDepth(0));
    layerAlong =
        each(v -> v.vessel().geometry().frozenResistance(0) / v.vessel().geometry().thickness());
    bottom = each(v -> v.stay().temperature().orElse(start_K));
    front = bottom.clone();
    depth = new double[size];
    moisture = each(v -> v.water().start());
    rate = new double[size];
    annealed = new double[size];
    limit = each(v -> v.critical().orElse(Double.POSITIVE_INFINITY));
    records = new VesselRecords(size);
  }

  /** Ice that vanishes per dried depth, kg/m. */
  double icePerDepth(int i, double depth_m) {
    return slab[i] ? iceAlong[i] : vessels[i].vessel().geometry().icePerDepth(depth_m);
  }

  /** Resistance to heat of the ice left below the front, K/W. */
  double layer(int i, double depth_m) {
    return slab[i]
        ? (thickness[i] - depth_m) * layerAlong[i]
        : vessels[i].vessel().geometry().frozenResistance(depth_m);
  }

  /** Resistance to vapor from front to chamber, Pa s/kg. */
  double vaporResistance(int i, double depth_m) {
    double dried =
        slab[i]
            ? cake[i].at(depth_m) / productArea[i]
            : vessels[i].vessel().geometry().cakeResistance(cake[i], depth_m);
    return dried + mouth[i];
  }

  /** Ice left in all vessels of kind {@code i}, kg. */
  double iceLeft(int i) {
    double whole = count[i] * vessels[i].vessel().geometry().iceMass();
    return slab[i]
        ? whole * (1 - depth[i] / thickness[i])
        : whole * (1 - vessels[i].vessel().geometry().driedFractionAt(depth[i]));
  }

  /** Depth of the front of vessel {@code i} when {@code gone_kg} more of its ice has gone, m. */
  double depthAfter(int i, double gone_kg) {
    double start = depth[i];
    if (slab[i]) {
      return start + gone_kg / iceAlong[i];
    }
    FrontGeometry geometry = vessels[i].vessel().geometry();
    double dried = geometry.driedFractionAt(start) + gone_kg / geometry.iceMass();
    return geometry.depthAtDriedFraction(Math.min(1, dried));
  }

  boolean isOn(int i, double time_s) {
    return vessels[i].stay().covers(time_s);
  }

  private double[] each(ToDoubleFunction<CycleVessel> value) {
    return Arrays.stream(vessels).mapToDouble(value).toArray();
  }
}
