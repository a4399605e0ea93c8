package org.firnline.drying.primary;

import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Problem;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Solution;
import org.firnline.numerics.GaussLegendre;
import org.firnline.units.Figures;

/**
 * Product frozen on the inner wall of a flask: a cylinder whose front moves outward from the free
 * surface to the wall, with heat from the room through the glass. End caps are left out.
 *
 * @param iceMass ice at the start, kg; positive
 * @param wallRadius r_o: inner radius of the glass, m; positive
 * @param thickness δ: thickness of the frozen shell, m; positive, below {@code wallRadius}
 * @param height H: height of the cylinder, m; positive
 * @param frozenConductivity k_f, W/(m K); positive
 * @param glass the wall of the flask
 */
public record Shell(
    double iceMass,
    double wallRadius,
    double thickness,
    double height,
    double frozenConductivity,
    Glass glass)
    implements FrontGeometry {

  private static final double INTEGRAL_ACCURACY = 1e-13;

  /** Below this product A_2 r_i is far enough from 1, and A_2 from 0, for the closed form. */
  private static final double SAFE_DISTANCE = 0.05;

  /**
   * The glass wall between frost and product.
   *
   * @param thickness m; 0 or more
   * @param conductivity W/(m K); positive; borosilicate glass about 1.1 (from memory)
   */
  public record Glass(double thickness, double conductivity) {

    /** A wall that does not hinder heat. */
    public static final Glass NONE = new Glass(0, 1.1);

    public Glass {
      if (!(thickness >= 0)) {
        throw new IllegalArgumentException("glass thickness " + thickness + " is negative");
      }
      Positive.require(conductivity, "glass conductivity");
    }
  }

  public Shell {
    Positive.require(iceMass, "ice mass");
    Positive.require(thickness, "shell thickness");
    Positive.require(height, "shell height");
    Positive.require(frozenConductivity, "frozen conductivity");
    Positive.require(wallRadius - thickness, "free radius inside the shell");
  }

  /**
   * The shell that {@code fill_m3} of {@code solution} freezes to on a wall of the given size.
   *
   * @throws InvalidInputException if the frozen volume fills the whole cylinder
   */
  public static Shell of(
      Solution solution, double fill_m3, double wallRadius, double height, Glass glass) {
    double frozen = solution.frozenVolume(fill_m3);
    double room = Math.PI * wallRadius * wallRadius * height;
    if (frozen >= room) {
      throw new InvalidInputException(
          new Problem(
              "shell-too-thick",
              "a frozen volume of " + Figures.significant(frozen * 1e6, 3) + " mL",
              "fill volume",
              "fills the whole flask wall, " + Figures.significant(room * 1e6, 3) + " mL",
              "use a larger flask or divide the sample"));
    }
    double freeRadius = Math.sqrt(wallRadius * wallRadius - frozen / (Math.PI * height));
    return new Shell(
        solution.iceMass(fill_m3),
        wallRadius,
        wallRadius - freeRadius,
        height,
        solution.frozenConductivity(),
        glass);
  }

  /** Ice per frozen volume ρ_e, kg/m3. */
  public double icePerVolume() {
    double freeRadius = wallRadius - thickness;
    return iceMass / (Math.PI * (wallRadius * wallRadius - freeRadius * freeRadius) * height);
  }

  @Override
  public double icePerDepth(double depth_m) {
    return icePerVolume() * 2 * Math.PI * frontRadius(depth_m) * height;
  }

  @Override
  public double cakeResistance(CakeResistance cake, double depth_m) {
    double freeRadius = wallRadius - thickness;
    double perRadius = cake.initial() / freeRadius + cakeIntegral(cake, freeRadius, depth_m);
    return perRadius / (2 * Math.PI * height);
  }

  @Override
  public double outerConductance(double coefficient, double depth_m) {
    double perimeter = 2 * Math.PI * height;
    double outerRadius = wallRadius + glass.thickness();
    double resistance =
        1 / (coefficient * perimeter * outerRadius)
            + Math.log(outerRadius / wallRadius) / (perimeter * glass.conductivity())
            + frozenResistance(depth_m);
    return 1 / resistance;
  }

  @Override
  public double frozenResistance(double depth_m) {
    return Math.log(wallRadius / frontRadius(depth_m))
        / (2 * Math.PI * frozenConductivity * height);
  }

  @Override
  public double surfaceArea() {
    return 2 * Math.PI * (wallRadius - thickness) * height;
  }

  @Override
  public double depthAtDriedFraction(double fraction) {
    double freeRadius = wallRadius - thickness;
    double squared =
        freeRadius * freeRadius + fraction * (wallRadius * wallRadius - freeRadius * freeRadius);
    return Math.sqrt(squared) - freeRadius;
  }

  @Override
  public double driedFractionAt(double depth_m) {
    double freeRadius = wallRadius - thickness;
    return depth_m * (2 * freeRadius + depth_m) / (thickness * (2 * wallRadius - thickness));
  }

  @Override
  public double curvature() {
    return thickness * (2 * wallRadius - thickness) / (wallRadius * wallRadius);
  }

  @Override
  public Shell filledBy(double factor) {
    double freeRadius = wallRadius - thickness;
    double ring = wallRadius * wallRadius - freeRadius * freeRadius;
    double newRadius = Math.sqrt(Math.max(0, wallRadius * wallRadius - factor * ring));
    return new Shell(
        iceMass * factor, wallRadius, wallRadius - newRadius, height, frozenConductivity, glass);
  }

  private double frontRadius(double depth_m) {
    return wallRadius - thickness + depth_m;
  }

  /** ∫₀^ℓ (dR_p/ds)/(r_i + s) ds, closed where the closed form is well conditioned. */
  private static double cakeIntegral(CakeResistance cake, double freeRadius, double depth_m) {
    double leveling = cake.leveling();
    if (leveling == 0) {
      return cake.growth() * Math.log1p(depth_m / freeRadius);
    }
    double difference = 1 - leveling * freeRadius;
    if (leveling * freeRadius > SAFE_DISTANCE && Math.abs(difference) > SAFE_DISTANCE) {
      double logarithms = Math.log1p(depth_m / freeRadius) - Math.log1p(leveling * depth_m);
      return cake.growth()
          * (logarithms / (difference * difference)
              - leveling * depth_m / (difference * (1 + leveling * depth_m)));
    }
    return GaussLegendre.integrate(
        depth -> cake.slope(depth) / (freeRadius + depth), 0, depth_m, INTEGRAL_ACCURACY);
  }
}
