package org.firnline.planning.ask;

import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.planning.Verdict;

/**
 * Whether the chamber pressure can be what the product needs, given the collector's temperature.
 *
 * <p>The collector's own ice gives off vapor up to its vapor pressure, below which no pump gets the
 * chamber for long; the product's ice must lie well above the chamber pressure.
 *
 * <p>Source: ice by IAPWS R14-08(2011); a chamber pressure of 20 to 30 % of the product's ice vapor
 * pressure after Tang &amp; Pikal, Pharm. Res. 21, 191 (2004) (from memory); a collector 10 to 15 K
 * colder than the product after two equipment makers' texts (found).
 *
 * @param product temperature the ice shall have, K; that of ice
 * @param collector temperature under load, K; that of ice
 * @param pressure what pump and gauge reach, Pa; positive
 */
public record PressureReach(double product, double collector, double pressure) {

  private static final double LOW_SHARE = 0.2;
  private static final double HIGH_SHARE = 0.3;
  private static final double COLDER_STOP_K = 10;
  private static final double COLDER_PASS_K = 15;

  private static final IceVaporPressure ICE = new WagnerEtAl2011Ice();

  public PressureReach {
    Given.ice(product, "product temperature");
    Given.ice(collector, "collector temperature");
    Given.positive(pressure, "chamber pressure", "Pa");
  }

  /** Vapor pressure of the product's ice, Pa. */
  public double productIce_Pa() {
    return ICE.pressure(product);
  }

  /** Vapor pressure of the collector's ice, Pa: the floor of the chamber pressure. */
  public double floor_Pa() {
    return ICE.pressure(collector);
  }

  /** Lower end of the pressures that are usually set for this product temperature, Pa. */
  public double usualLow_Pa() {
    return LOW_SHARE * productIce_Pa();
  }

  /** Upper end of them, Pa. */
  public double usualHigh_Pa() {
    return HIGH_SHARE * productIce_Pa();
  }

  /** How much colder the collector is than the product, K. */
  public double colder_K() {
    return product - collector;
  }

  /** Temperature below which ice gives off nothing at this chamber pressure, K. */
  public double coldestDrying_K() {
    return ICE.saturationTemperature(pressure);
  }

  /** What decides. */
  public Finding finding() {
    if (pressure >= productIce_Pa()) {
      return Finding.NOTHING_SUBLIMES;
    }
    if (colder_K() < COLDER_STOP_K || floor_Pa() >= usualHigh_Pa()) {
      return Finding.COLLECTOR_TOO_WARM;
    }
    if (pressure < floor_Pa()) {
      return Finding.BELOW_COLLECTOR_FLOOR;
    }
    if (pressure > usualHigh_Pa()) {
      return Finding.PRESSURE_HIGH;
    }
    return colder_K() < COLDER_PASS_K ? Finding.COLLECTOR_NEAR : Finding.REACHED;
  }

  /** What can be found; each with its verdict. */
  public enum Finding {
    /** Ice at this temperature gives off nothing at this pressure. */
    NOTHING_SUBLIMES(Verdict.STOP),
    /** The collector's own ice keeps the chamber above what the product needs. */
    COLLECTOR_TOO_WARM(Verdict.STOP),
    /** No chamber stays below the vapor pressure of its collector: gauge or collector is wrong. */
    BELOW_COLLECTOR_FLOOR(Verdict.WATCH),
    /** It dries, with little drive. */
    PRESSURE_HIGH(Verdict.WATCH),
    /** The collector is between 10 and 15 K colder than the product. */
    COLLECTOR_NEAR(Verdict.WATCH),
    /** Pressure and collector suit the product. */
    REACHED(Verdict.PASS);

    private final Verdict verdict;

    Finding(Verdict verdict) {
      this.verdict = verdict;
    }

    public Verdict verdict() {
      return verdict;
    }
  }
}
