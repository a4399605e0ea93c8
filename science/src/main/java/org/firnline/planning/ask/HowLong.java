package org.firnline.planning.ask;

import java.util.List;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.primary.VialTrajectory;
import org.firnline.evidence.Band;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Solution;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.numerics.Normal;
import org.firnline.numerics.Quantile;
import org.firnline.numerics.SobolPoints;

/**
 * How long a layer of ice takes, as a band.
 *
 * <p>The layer is dried as a slab by the kernel of whole plans, heat entering over the heated area
 * and vapor leaving over the mean of heated and free area. Heat transfer and cake resistance are
 * drawn together from lognormal spreads by 256 Sobol points of fixed seed.
 *
 * <p>Assumes constant pressure and surroundings. Source: docs/science.md, section 4; derived.
 *
 * @param layer what is frozen
 * @param ice in it, kg; positive
 * @param heatTransfer from the surroundings to the outside of the layer, W/(m2 K); best positive
 * @param surroundings temperature of room or shelf, K; positive
 * @param pressure chamber pressure, Pa; positive
 * @param cake its resistance at the best values
 * @param cakeFactor doubt about it as a factor; best positive
 */
public record HowLong(
    IceLayer layer,
    double ice,
    Estimate heatTransfer,
    double surroundings,
    double pressure,
    CakeResistance cake,
    Estimate cakeFactor) {

  /**
   * A dilute sugar or protein cake: 5 % sucrose, R_p about 5e4 m/s at the top and 5e5 m/s under 10
   * mm. Source: order of published values for dilute sugar solutions (from memory).
   */
  public static final CakeResistance USUAL_CAKE = new CakeResistance(5e4, 5e7, 0);

  /** Published resistances of like products differ by about this factor (from memory). */
  public static final Estimate USUAL_CAKE_FACTOR =
      new Estimate(
          1,
          0.4,
          new Provenance.Published(
              new Source(
                  "published cake resistances of dilute solutions spread by half or more",
                  Source.Status.FROM_MEMORY)));

  private static final int SAMPLES = 256;
  private static final long SEED = 20_261;
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  public HowLong {
    Given.positive(ice, "ice", "kg");
    Given.positive(heatTransfer.best(), "heat transfer", "W/(m2 K)");
    Given.positive(surroundings, "temperature of the surroundings", "K");
    Given.positive(pressure, "chamber pressure", "Pa");
    Given.positive(cakeFactor.best(), "cake factor", "");
  }

  /**
   * The band of drying times, and what the ice is expected to do.
   *
   * @throws InvalidInputException if the layer holds less room than the ice needs
   */
  public Answer answer() {
    List<double[]> points = SobolPoints.of(SAMPLES, 2, SEED);
    double[] times = new double[SAMPLES];
    double[] warmest = new double[SAMPLES];
    for (int sample = 0; sample < SAMPLES; sample++) {
      double[] point = points.get(sample);
      VialTrajectory path = dry(lognormal(heatTransfer, point[0]), lognormal(cakeFactor, point[1]));
      times[sample] = Double.isNaN(path.time()) ? Double.POSITIVE_INFINITY : path.time();
      warmest[sample] = Double.isNaN(path.warmest()) ? Double.POSITIVE_INFINITY : path.warmest();
    }
    VialTrajectory best = dry(heatTransfer.best(), cakeFactor.best());
    return new Answer(band(times), band(warmest), best.ending());
  }

  /**
   * Time if only heat decided, s: m ΔH/(U A (T* − T)).
   *
   * @param ice_K temperature of the ice, below the surroundings
   */
  public double heatLimited(double ice_K) {
    Given.ice(ice_K, "temperature of the ice");
    double drive = surroundings - ice_K;
    return drive > 0
        ? ice
            * new MurphyKoop2005Enthalpy().specific(ice_K)
            / (heatTransfer.best() * layer.heatArea() * drive)
        : Double.POSITIVE_INFINITY;
  }

  private VialTrajectory dry(double coefficient, double factor) {
    double vaporArea = (layer.heatArea() + layer.freeArea()) / 2;
    Slab slab =
        new Slab(
            ice,
            layer.meanThickness() * layer.heatArea() / vaporArea,
            vaporArea,
            layer.heatArea(),
            Solution.TYPICAL_FROZEN_CONDUCTIVITY);
    HeatSupply supply = new HeatSupply(coefficient, surroundings, HeatSupply.Above.NONE);
    return FastPrimaryDrying.run(new DryingVessel(slab, cake.times(factor), 0), supply, pressure);
  }

  private static double lognormal(Estimate value, double share) {
    double spread = value.spread() / value.best();
    return value.best() * Math.exp(spread * Normal.quantile(share));
  }

  private static Band band(double[] sample) {
    Quantile quantile = new Quantile(sample);
    return new Band(quantile.at(LOW), quantile.at(1.0 / 2), quantile.at(HIGH));
  }

  /**
   * What is expected; bands hold nine chances in ten.
   *
   * @param time_s until the last ice is gone; infinite where it never dries or melts first
   * @param warmest_K greatest temperature of any ice; infinite where it melts
   * @param ending how it ends at the best values
   */
  public record Answer(Band time_s, Band warmest_K, VialTrajectory.Ending ending) {

    /** Whether the ice goes at the best values without melting. */
    public boolean dries() {
      return ending == VialTrajectory.Ending.DRIES;
    }
  }
}
