package org.firnline.drying.primary;

import org.firnline.lab.CakeResistance;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * Primary drying written down a second time, straight from the equations and sharing nothing with
 * the code under test but the properties of ice: the balance by halving, time by the Dormand–Prince
 * 8(5,3) integrator of Hipparchus. The cake integral of a shell is integrated alongside.
 */
final class SecondWay implements OrdinaryDifferentialEquation {

  private static final double TOLERANCE = 1e-11;
  private static final double TRIPLE_POINT_K = 273.16;
  private static final int HALVINGS = 60;

  private final WagnerEtAl2011Ice ice = new WagnerEtAl2011Ice();
  private final MurphyKoop2005Enthalpy enthalpy = new MurphyKoop2005Enthalpy();
  private final AdmissibleCases.Case given;

  SecondWay(AdmissibleCases.Case given) {
    this.given = given;
  }

  /**
   * Front, bottom and vapor rate at one depth.
   *
   * @param front K
   * @param bottom K
   * @param rate kg/s
   */
  record Balance(double front, double bottom, double rate) {}

  /** Time until the front has reached {@code depth_m}, s. */
  double timeTo(double depth_m) {
    return integrate(depth_m)[0];
  }

  /** The balance at {@code depth_m}. */
  Balance at(double depth_m) {
    return balance(depth_m, depth_m == 0 ? 0 : integrate(depth_m)[1]);
  }

  private double[] integrate(double depth_m) {
    var integrator = new DormandPrince853Integrator(1e-13 * depth_m, depth_m, TOLERANCE, TOLERANCE);
    return integrator
        .integrate(this, new ODEState(0, new double[] {0, 0}), depth_m)
        .getPrimaryState();
  }

  @Override
  public int getDimension() {
    return 2;
  }

  @Override
  public double[] computeDerivatives(double depth, double[] state) {
    CakeResistance cake = given.vessel().cake();
    double denominator = 1 + cake.leveling() * depth;
    double growth = cake.growth() / (denominator * denominator);
    return new double[] {
      icePerDepth(depth) / balance(depth, state[1]).rate(), growth / radius(depth)
    };
  }

  /** Distance of the front from the axis, m; 1 for a flat product, where it plays no part. */
  private double radius(double depth) {
    return given.vessel().geometry() instanceof Shell shell
        ? shell.wallRadius() - shell.thickness() + depth
        : 1;
  }

  private double icePerDepth(double depth) {
    if (given.vessel().geometry() instanceof Shell shell) {
      double inner = shell.wallRadius() - shell.thickness();
      double section = shell.wallRadius() * shell.wallRadius() - inner * inner;
      return shell.iceMass() * 2 * radius(depth) / section;
    }
    Slab slab = (Slab) given.vessel().geometry();
    return slab.iceMass() / slab.thickness();
  }

  private Balance balance(double depth, double cakeIntegral) {
    double resistance = resistance(depth, cakeIntegral);
    double frozen = frozenResistance(depth);
    double below = 1 / (outerResistance() + frozen);
    double above = aboveConductance(depth);
    double pressure = given.pressure_Pa();
    HeatSupply supply = given.supply();
    double low = ice.saturationTemperature(pressure);
    double high = TRIPLE_POINT_K;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      double heat =
          below * (supply.temperature() - middle) + above * (supply.above().temperature() - middle);
      double vapor = enthalpy.specific(middle) * (ice.pressure(middle) - pressure);
      boolean tooCold = resistance * heat > vapor;
      low = tooCold ? middle : low;
      high = tooCold ? high : middle;
    }
    double front = (low + high) / 2;
    double fromBelow = below * (supply.temperature() - front);
    double heat = fromBelow + above * (supply.above().temperature() - front);
    return new Balance(front, front + fromBelow * frozen, heat / enthalpy.specific(front));
  }

  private double resistance(double depth, double cakeIntegral) {
    CakeResistance cake = given.vessel().cake();
    double mouth = given.vessel().mouthResistance();
    if (given.vessel().geometry() instanceof Shell shell) {
      double inner = shell.wallRadius() - shell.thickness();
      return (cake.initial() / inner + cakeIntegral) / (2 * Math.PI * shell.height()) + mouth;
    }
    double perArea = cake.initial() + cake.growth() * depth / (1 + cake.leveling() * depth);
    return perArea / ((Slab) given.vessel().geometry()).productArea() + mouth;
  }

  private double frozenResistance(double depth) {
    if (given.vessel().geometry() instanceof Shell shell) {
      return Math.log(shell.wallRadius() / radius(depth))
          / (2 * Math.PI * shell.frozenConductivity() * shell.height());
    }
    Slab slab = (Slab) given.vessel().geometry();
    return (slab.thickness() - depth) / (slab.frozenConductivity() * slab.productArea());
  }

  private double outerResistance() {
    double coefficient = given.supply().coefficient();
    if (given.vessel().geometry() instanceof Shell shell) {
      double outer = shell.wallRadius() + shell.glass().thickness();
      double glass = Math.log(outer / shell.wallRadius()) / shell.glass().conductivity();
      return (1 / (coefficient * outer) + glass) / (2 * Math.PI * shell.height());
    }
    return 1 / (coefficient * ((Slab) given.vessel().geometry()).vesselArea());
  }

  private double aboveConductance(double depth) {
    HeatSupply.Above above = given.supply().above();
    if (above.coefficient() == 0) {
      return 0;
    }
    double area = ((Slab) given.vessel().geometry()).productArea();
    return area / (1 / above.coefficient() + depth / above.cakeConductivity());
  }
}
