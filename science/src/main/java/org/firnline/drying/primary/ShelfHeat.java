package org.firnline.drying.primary;

import org.firnline.lab.HeatTransfer;
import org.firnline.matter.Water;

/**
 * Heat from the shelf a vessel stands on, and from what else surrounds it.
 *
 * @param transfer K_v(P) from shelf to bottom, on the outer bottom area
 * @param wall a wall beside the vessel
 * @param above what is above it
 */
public record ShelfHeat(HeatTransfer transfer, Wall wall, Above above) implements HeatSource {

  /**
   * A wall or door beside a vessel.
   *
   * @param coefficient K_side on the outer bottom area, W/(m2 K); 0 or more
   * @param temperature K
   */
  public record Wall(double coefficient, double temperature) {

    /** No wall near enough to matter. */
    public static final Wall NONE = new Wall(0, Water.TRIPLE_POINT_TEMPERATURE);
  }

  /** A surface above the product, warm enough to matter. */
  public sealed interface Above {

    /** That surface while the shelf below has {@code shelf_K}. */
    HeatSupply.Above at(double shelf_K);

    /** Nothing warm above. */
    Above NONE = new Fixed(HeatSupply.Above.NONE);

    /** A surface of its own temperature. */
    record Fixed(HeatSupply.Above surface) implements Above {
      @Override
      public HeatSupply.Above at(double shelf_K) {
        return surface;
      }
    }

    /**
     * The underside of the next shelf, as warm as the shelf below.
     *
     * @param coefficient W/(m2 K); 0 or more
     * @param cakeConductivity k_cake, W/(m K); positive
     */
    record NextShelf(double coefficient, double cakeConductivity) implements Above {
      @Override
      public HeatSupply.Above at(double shelf_K) {
        return new HeatSupply.Above(coefficient, cakeConductivity, shelf_K);
      }
    }
  }

  /** A vessel amid its like: heat from the shelf only. */
  public static ShelfHeat of(HeatTransfer transfer) {
    return new ShelfHeat(transfer, Wall.NONE, Above.NONE);
  }

  @Override
  public HeatSupply at(double shelf_K, double pressure_Pa) {
    HeatSupply shelf = HeatSupply.fromShelf(transfer, shelf_K, pressure_Pa);
    HeatSupply walled =
        wall.coefficient() == 0 ? shelf : shelf.withWall(wall.coefficient(), wall.temperature());
    return walled.withAbove(above.at(shelf_K));
  }

  /** K_v times {@code factor}; wall and what is above stay as they are. */
  @Override
  public ShelfHeat times(double factor) {
    return new ShelfHeat(transfer.times(factor), wall, above);
  }
}
