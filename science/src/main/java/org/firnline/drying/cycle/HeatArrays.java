package org.firnline.drying.cycle;

import java.util.List;
import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.HeatSource;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.RoomHeat;
import org.firnline.drying.primary.ShelfHeat;

/**
 * What warms each vessel of a load, in plain numbers: shelf and wall (or room) from outside, a
 * surface above. A room is a wall of its temperature; the glass of a flask lies in series.
 */
final class HeatArrays {

  private final double[] contact;
  private final double[] gas;
  private final double[] leveling;
  private final double[] wallCoefficient;
  private final double[] wallTemperature;
  private final double[] area;
  private final double[] glass;
  private final double[] topCoefficient;
  private final double[] topConductivity;
  private final double[] topTemperature;
  private final boolean[] topIsShelf;
  private final double[] topArea;

  HeatArrays(List<CycleVessel> vessels) {
    int size = vessels.size();
    contact = new double[size];
    gas = new double[size];
    leveling = new double[size];
    wallCoefficient = new double[size];
    wallTemperature = new double[size];
    area = new double[size];
    glass = new double[size];
    topCoefficient = new double[size];
    topConductivity = new double[size];
    topTemperature = new double[size];
    topIsShelf = new boolean[size];
    topArea = new double[size];
    for (int i = 0; i < size; i++) {
      shape(i, vessels.get(i).vessel().geometry());
      source(i, vessels.get(i).heat());
    }
  }

  /** Outer area and glass from two coefficients: 1/G = 1/(h A) + glass. */
  private void shape(int i, FrontGeometry geometry) {
    double wall = geometry.outerConductance(Double.POSITIVE_INFINITY, geometry.thickness());
    glass[i] = Double.isInfinite(wall) ? 0 : 1 / wall;
    area[i] = 1 / (1 / geometry.outerConductance(1, geometry.thickness()) - glass[i]);
    topArea[i] = geometry.surfaceArea();
  }

  private void source(int i, HeatSource heat) {
    if (heat instanceof RoomHeat room) {
      wallCoefficient[i] = room.coefficient();
      wallTemperature[i] = room.temperature();
    } else if (heat instanceof ShelfHeat shelf) {
      contact[i] = shelf.transfer().contact();
      gas[i] = shelf.transfer().gas();
      leveling[i] = shelf.transfer().leveling();
      wallCoefficient[i] = shelf.wall().coefficient();
      wallTemperature[i] = shelf.wall().temperature();
      above(i, shelf.above());
    } else {
      throw new IllegalArgumentException("a cycle does not know heat from " + heat);
    }
  }

  private void above(int i, ShelfHeat.Above above) {
    HeatSupply.Above surface = above.at(1);
    topCoefficient[i] = surface.coefficient();
    topConductivity[i] = surface.cakeConductivity();
    topTemperature[i] = surface.temperature();
    topIsShelf[i] = above instanceof ShelfHeat.Above.NextShelf;
  }

  private double fromShelf(int i, double pressure_Pa) {
    return contact[i] + gas[i] * pressure_Pa / (1 + leveling[i] * pressure_Pa);
  }

  /** Conductance from shelf, wall and room to the bottom or wall of the product, W/K. */
  double outer(int i, double pressure_Pa) {
    double bare = area[i] * (fromShelf(i, pressure_Pa) + wallCoefficient[i]);
    return glass[i] == 0 ? bare : bare / (1 + bare * glass[i]);
  }

  /** Temperature that shelf, wall and room together drive the vessel to, K. */
  double source(int i, double shelf_K, double pressure_Pa) {
    double wall = wallCoefficient[i];
    if (wall == 0) {
      return shelf_K;
    }
    double shelf = fromShelf(i, pressure_Pa);
    return (shelf * shelf_K + wall * wallTemperature[i]) / (shelf + wall);
  }

  /** Conductance from the surface above through a cake, W/K; 0 where there is none. */
  double top(int i, double depth_m) {
    return topCoefficient[i] == 0
        ? 0
        : topArea[i] / (1 / topCoefficient[i] + depth_m / topConductivity[i]);
  }

  /** Temperature of the surface above, K. */
  double topTemperature(int i, double shelf_K) {
    return topIsShelf[i] ? shelf_K : topTemperature[i];
  }
}
