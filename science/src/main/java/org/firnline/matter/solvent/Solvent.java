package org.firnline.matter.solvent;

import org.firnline.evidence.Source;
import org.firnline.matter.Water;

/**
 * A pure volatile liquid, with its vapor pressure by Clausius and Clapeyron from 25 °C: ln(p/p₂₅) =
 * −(ΔH/R)(1/T − 1/T₂₅), with the heat of vaporization down to the melting point and the heat of
 * sublimation below.
 *
 * <p>Assumes constant heats and the pure substance; in a mixture with water both melting point and
 * vapor pressure are lower.
 *
 * <p>Valid: 170 K to the boiling point. Source: the columns of {@code solvents.csv}. Accuracy: a
 * few percent near room temperature, a factor of two to three at collector temperatures: it says
 * whether a collector can hold the solvent, not how much of it passes.
 *
 * @param name plain name
 * @param meltingPoint K; positive
 * @param boilingPoint at 101 325 Pa, K; above {@code meltingPoint}
 * @param fusion heat of fusion, J/mol; 0 where unknown, which overstates the vapor pressure
 * @param anchor vapor pressure at 25 °C, Pa; positive
 * @param vaporization heat of vaporization near 25 °C, J/mol; positive
 * @param origin of melting point, boiling point and heat of fusion
 * @param vaporOrigin of vapor pressure and heat of vaporization
 * @param materials what it does to dryer, pump and seals
 * @param people why people should mind it
 */
public record Solvent(
    String name,
    double meltingPoint,
    double boilingPoint,
    double fusion,
    double anchor,
    double vaporization,
    Source origin,
    Source vaporOrigin,
    String materials,
    String people) {

  /** Temperature of {@link #anchor()}, K: 25 °C. */
  public static final double ANCHOR_TEMPERATURE = 298.15;

  /** What becomes of its vapor at a collector. */
  public enum Trapping {
    /** Freezes out: its pressure over its own solid lies below a tenth of the chamber pressure. */
    FREEZES,
    /** Condenses but stays liquid, may run off and come back when the collector warms. */
    STAYS_LIQUID,
    /** Part of it passes on: its own pressure is a tenth to the whole of the chamber pressure. */
    PARTLY_PASSES,
    /** Passes to the pump: the collector is too warm for it at this pressure. */
    PASSES
  }

  /** Below this share of the chamber pressure nearly all of a vapor can condense. */
  private static final double HELD_SHARE = 0.1;

  /** Vapor pressure in Pa over the pure liquid or solid at {@code temperature_K}. */
  public double vaporPressure(double temperature_K) {
    double reach = Math.max(temperature_K, Math.min(meltingPoint, ANCHOR_TEMPERATURE));
    double liquid = exponent(vaporization, reach, ANCHOR_TEMPERATURE);
    double solid = exponent(vaporization + fusion, temperature_K, reach);
    return anchor * Math.exp(liquid + solid);
  }

  /** Whether the pure substance is solid at {@code temperature_K}. */
  public boolean isSolidAt(double temperature_K) {
    return temperature_K < meltingPoint;
  }

  /**
   * What becomes of its vapor.
   *
   * @param collector_K surface temperature of the collector
   * @param pressure_Pa chamber pressure
   */
  public Trapping trappedAt(double collector_K, double pressure_Pa) {
    double share = vaporPressure(collector_K) / pressure_Pa;
    if (share >= 1) {
      return Trapping.PASSES;
    }
    if (share > HELD_SHARE) {
      return Trapping.PARTLY_PASSES;
    }
    return isSolidAt(collector_K) ? Trapping.FREEZES : Trapping.STAYS_LIQUID;
  }

  /** A substance that melts above 25 °C is anchored as a supercooled liquid. */
  private static double exponent(double heat, double temperature_K, double from_K) {
    return -heat / Water.GAS_CONSTANT * (1 / temperature_K - 1 / from_K);
  }
}
