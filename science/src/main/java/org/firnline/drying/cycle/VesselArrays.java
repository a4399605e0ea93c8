package org.firnline.drying.cycle;

import java.util.Arrays;
import java.util.List;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.firnline.matter.Water;

/**
 * The vessels of a load in plain arrays: what never changes, and the state of each. Only the steps
 * of this package write to it.
 */
final class VesselArrays {

  static final byte LIQUID = 0;
  static final byte FREEZING = 1;
  static final byte FROZEN = 2;
  static final byte DRY = 3;

  /** Stands where nothing is left to freeze; never looked at. */
  private static final CycleVessel.Freezing FROZEN_BEFORE =
      new CycleVessel.Freezing(
          CycleVessel.DILUTE_FREEZING_POINT, CycleVessel.DILUTE_FREEZING_POINT, 1);

  final int size;
  final double[] count;

  final double[] productArea;
  final double[] vesselArea;
  final double[] thickness;
  final double[] iceMass;
  final double[] conductivity;
  final CakeResistance[] cake;
  final double[] mouth;
  final HeatTransfer[] transfer;
  final double[] wallCoefficient;
  final double[] wallTemperature;
  final double[] glassCapacity;
  final double[] frozenCapacity;
  final CycleVessel.Freezing[] freezing;
  final CycleVessel.Desorption[] desorption;

  final byte[] stage;
  final double[] bottom;
  final double[] front;
  final double[] depth;
  final double[] frozenShare;
  final double[] moisture;
  final double[] rate;
  final double[] nucleatedAt;
  final double[] endOfIce;
  final double[] warmestIce;

  VesselArrays(List<CycleVessel> vessels, double start_K) {
    size = vessels.size();
    count = each(vessels, CycleVessel::count);
    productArea = each(vessels, v -> v.slab().productArea());
    vesselArea = each(vessels, v -> v.slab().vesselArea());
    thickness = each(vessels, v -> v.slab().thickness());
    iceMass = each(vessels, v -> v.slab().iceMass());
    conductivity = each(vessels, v -> v.slab().frozenConductivity());
    cake = vessels.stream().map(v -> v.vessel().cake()).toArray(CakeResistance[]::new);
    mouth = each(vessels, v -> v.vessel().mouthResistance());
    transfer = vessels.stream().map(v -> v.heat().transfer()).toArray(HeatTransfer[]::new);
    wallCoefficient = each(vessels, v -> v.heat().wall().coefficient());
    wallTemperature = each(vessels, v -> v.heat().wall().temperature());
    glassCapacity = each(vessels, v -> v.mass().vessel());
    frozenCapacity = each(vessels, v -> v.mass().frozen());
    freezing =
        vessels.stream()
            .map(vessel -> vessel.freezing().orElse(FROZEN_BEFORE))
            .toArray(CycleVessel.Freezing[]::new);
    desorption =
        vessels.stream().map(CycleVessel::desorption).toArray(CycleVessel.Desorption[]::new);
    stage = new byte[size];
    for (int i = 0; i < size; i++) {
      stage[i] = vessels.get(i).freezing().isPresent() ? LIQUID : FROZEN;
    }
    bottom = filled(start_K);
    front = filled(start_K);
    depth = new double[size];
    frozenShare = new double[size];
    moisture = each(vessels, v -> v.desorption().start());
    rate = new double[size];
    nucleatedAt = filled(Double.POSITIVE_INFINITY);
    endOfIce = filled(Double.POSITIVE_INFINITY);
    warmestIce = filled(0);
  }

  /** Conductance from shelf and wall to the bottom of vessel {@code i} at a pressure, W/K. */
  double outerConductance(int i, double pressure_Pa) {
    return vesselArea[i] * (transfer[i].at(pressure_Pa) + wallCoefficient[i]);
  }

  /** Temperature that shelf and wall together drive vessel {@code i} to, K. */
  double source(int i, double shelf_K, double pressure_Pa) {
    double shelfCoefficient = transfer[i].at(pressure_Pa);
    double wall = wallCoefficient[i];
    return wall == 0
        ? shelf_K
        : (shelfCoefficient * shelf_K + wall * wallTemperature[i]) / (shelfCoefficient + wall);
  }

  /** Ice per dried depth, kg/m. */
  double icePerDepth(int i) {
    return iceMass[i] / thickness[i];
  }

  /** Heat to be taken out to freeze vessel {@code i}, J. */
  double heatOfFreezing(int i) {
    return iceMass[i] * Water.FUSION_ENTHALPY;
  }

  boolean allDry() {
    for (byte now : stage) {
      if (now != DRY) {
        return false;
      }
    }
    return true;
  }

  private double[] filled(double value) {
    double[] array = new double[size];
    Arrays.fill(array, value);
    return array;
  }

  private static double[] each(
      List<CycleVessel> vessels, java.util.function.ToDoubleFunction<CycleVessel> value) {
    return vessels.stream().mapToDouble(value).toArray();
  }
}
