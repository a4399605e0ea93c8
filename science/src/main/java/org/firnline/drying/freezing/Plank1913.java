package org.firnline.drying.freezing;

/**
 * Freezing time of a body that is already at its freezing point, cooled from outside: the front
 * moves inward as fast as the frozen part and the surface let the heat of fusion out.
 *
 * <p>Assumes no heat to be taken out before or after, constant properties.
 *
 * <p>Valid: superheat and subcooling small against the heat of fusion; real times are 10 to 30 %
 * longer.
 *
 * <p>Source: Plank (1913) as in Caballero (ed.), Encyclopedia of Food Sciences and Nutrition, P and
 * R for slab, cylinder and sphere (found).
 *
 * @param heat of fusion per volume of frozen product, J/m3; positive
 * @param freezingPoint K
 * @param surroundings K; below {@code freezingPoint}
 * @param coefficient at the surface, referred to the area of the front at the start, W/(m2 K);
 *     positive
 * @param conductivity of the frozen part, W/(m K); positive
 */
public record Plank1913(
    double heat,
    double freezingPoint,
    double surroundings,
    double coefficient,
    double conductivity) {

  /** Shapes cooled from all sides, with Plank's factors for their full thickness. */
  public enum Shape {
    SLAB(1.0 / 2, 1.0 / 8),
    CYLINDER(1.0 / 4, 1.0 / 16),
    SPHERE(1.0 / 6, 1.0 / 24);

    private final double surfaceFactor;
    private final double depthFactor;

    Shape(double surfaceFactor, double depthFactor) {
      this.surfaceFactor = surfaceFactor;
      this.depthFactor = depthFactor;
    }
  }

  public Plank1913 {
    if (!(heat > 0) || !(coefficient > 0) || !(conductivity > 0)) {
      throw new IllegalArgumentException("heat, coefficient and conductivity must be positive");
    }
  }

  /**
   * A layer cooled from one side, s: ΔH/(T_f − T_s) (L/K + L²/(2k)); infinite if the surroundings
   * are not colder than the freezing point.
   *
   * @param depth_m L
   */
  public double oneSided(double depth_m) {
    return time(depth_m / coefficient + depth_m * depth_m / (2 * conductivity));
  }

  /**
   * A body cooled from all sides, s; infinite if the surroundings are not colder.
   *
   * @param size_m full thickness or diameter
   */
  public double allSides(Shape shape, double size_m) {
    return time(
        shape.surfaceFactor * size_m / coefficient
            + shape.depthFactor * size_m * size_m / conductivity);
  }

  private double time(double resistance) {
    double drive = freezingPoint - surroundings;
    return drive > 0 ? heat / drive * resistance : Double.POSITIVE_INFINITY;
  }
}
