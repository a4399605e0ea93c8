package org.firnline.drying.primary;

import org.firnline.matter.IceVaporPressure;
import org.firnline.matter.MurphyKoop2005Enthalpy;
import org.firnline.matter.SublimationEnthalpy;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;

/**
 * Vapor pressure and sublimation enthalpy of ice from one table, for the hot loop.
 *
 * <p>Cubic Hermite pieces through the pressure and slope of {@link WagnerEtAl2011Ice} every 1/8 K,
 * straight pieces through the enthalpy of {@link MurphyKoop2005Enthalpy}. Pressure, its slopes and
 * the saturation temperature come from the same pieces, so that differences near the threshold of
 * sublimation stay smooth.
 *
 * <p>Valid: 130 K to 273.16 K; colder ice is answered by the equations themselves.
 *
 * <p>Accuracy: pressure within 2e-8 of the equation, enthalpy within 1e-7, both held by a test.
 * Source: interpolation error h⁴/384 p⁗ of cubic Hermite pieces, any text on numerical analysis.
 */
public final class IceTable implements IceVaporPressure, SublimationEnthalpy {

  private static final double COLDEST = 130;
  private static final int PER_KELVIN = 8;
  private static final int PIECES =
      (int) Math.floor((Water.TRIPLE_POINT_TEMPERATURE - COLDEST) * PER_KELVIN);

  /** Doubles per piece: four for the pressure, two for the enthalpy. */
  private static final int WIDTH = 6;

  /** Even steps of ln p for the first guess of a saturation temperature. */
  private static final double LOWEST_LOGARITHM = -20;

  private static final int PER_LOGARITHM = 16;
  private static final int GUESSES =
      (int) ((Math.log(Water.TRIPLE_POINT_PRESSURE) - LOWEST_LOGARITHM) * PER_LOGARITHM) + 1;

  private static final IceTable SHARED = new IceTable();

  private final WagnerEtAl2011Ice ice = new WagnerEtAl2011Ice();
  private final MurphyKoop2005Enthalpy enthalpy = new MurphyKoop2005Enthalpy();

  /** Coefficients in s = pieces below the triple point, counted downward from it. */
  private final double[] pieces = new double[PIECES * WIDTH];

  private final double[] guesses = new double[GUESSES + 1];

  private IceTable() {
    for (int piece = 0; piece < PIECES; piece++) {
      fill(piece);
    }
    for (int guess = 0; guess < guesses.length; guess++) {
      guesses[guess] = iceAt(LOWEST_LOGARITHM + (double) guess / PER_LOGARITHM);
    }
  }

  /** Ice temperature at a logarithm of pressure, continued straight above the triple point. */
  private double iceAt(double logarithm) {
    double above = logarithm - Math.log(Water.TRIPLE_POINT_PRESSURE);
    double warmest = Water.TRIPLE_POINT_TEMPERATURE;
    return above > 0
        ? warmest + above / ice.logarithmicSlope(warmest)
        : ice.saturationTemperature(Math.exp(logarithm));
  }

  /** The one table; it never changes. */
  public static IceTable shared() {
    return SHARED;
  }

  private void fill(int piece) {
    double warm = Water.TRIPLE_POINT_TEMPERATURE - (double) piece / PER_KELVIN;
    double cold = Water.TRIPLE_POINT_TEMPERATURE - (double) (piece + 1) / PER_KELVIN;
    double atWarm = ice.pressure(warm);
    double atCold = ice.pressure(cold);
    double slopeWarm = -atWarm * ice.logarithmicSlope(warm) / PER_KELVIN;
    double slopeCold = -atCold * ice.logarithmicSlope(cold) / PER_KELVIN;
    int at = piece * WIDTH;
    pieces[at] = atWarm;
    pieces[at + 1] = slopeWarm;
    pieces[at + 2] = 3 * (atCold - atWarm) - 2 * slopeWarm - slopeCold;
    pieces[at + 3] = 2 * (atWarm - atCold) + slopeWarm + slopeCold;
    pieces[at + 4] = enthalpy.specific(warm);
    pieces[at + 5] = enthalpy.specific(cold) - enthalpy.specific(warm);
  }

  @Override
  public double pressure(double temperature_K) {
    if (isOutside(temperature_K)) {
      return ice.pressure(temperature_K);
    }
    double scaled = scaled(temperature_K);
    int piece = piece(scaled);
    double s = scaled - piece;
    int at = piece * WIDTH;
    return pieces[at] + s * (pieces[at + 1] + s * (pieces[at + 2] + s * pieces[at + 3]));
  }

  /** dp/dT in Pa/K. */
  public double slope(double temperature_K) {
    if (isOutside(temperature_K)) {
      return ice.pressure(temperature_K) * ice.logarithmicSlope(temperature_K);
    }
    double scaled = scaled(temperature_K);
    int piece = piece(scaled);
    double s = scaled - piece;
    int at = piece * WIDTH;
    return -PER_KELVIN * (pieces[at + 1] + s * (2 * pieces[at + 2] + s * 3 * pieces[at + 3]));
  }

  /** d²p/dT² in Pa/K²; continuous only to about 1e-4 relative, for the use of iterations. */
  double curvature(double temperature_K) {
    if (isOutside(temperature_K)) {
      double logarithmic = ice.logarithmicSlope(temperature_K);
      return ice.pressure(temperature_K) * logarithmic * logarithmic;
    }
    double scaled = scaled(temperature_K);
    int piece = piece(scaled);
    int at = piece * WIDTH;
    return PER_KELVIN * PER_KELVIN * (2 * pieces[at + 2] + 6 * pieces[at + 3] * (scaled - piece));
  }

  /**
   * A better solution than {@code temperature_K} of coupling (source − T) = ΔH(T) (p(T) −
   * pressure): one step of Chebyshev's method, which converges cubically.
   */
  double improved(double temperature_K, double coupling, double source_K, double pressure_Pa) {
    if (isOutside(temperature_K)) {
      double heat = specific(temperature_K);
      double excess =
          coupling * (source_K - temperature_K) - heat * (pressure(temperature_K) - pressure_Pa);
      return temperature_K + excess / (coupling + heat * slope(temperature_K));
    }
    double scaled = scaled(temperature_K);
    int piece = piece(scaled);
    double s = scaled - piece;
    int at = piece * WIDTH;
    double c1 = pieces[at + 1];
    double c2 = pieces[at + 2];
    double c3 = pieces[at + 3];
    double heat = pieces[at + 4] + s * pieces[at + 5];
    double drive = pieces[at] + s * (c1 + s * (c2 + s * c3)) - pressure_Pa;
    double steepness = coupling - PER_KELVIN * heat * (c1 + s * (2 * c2 + s * 3 * c3));
    double newton = (coupling * (source_K - temperature_K) - heat * drive) / steepness;
    double curvature = PER_KELVIN * PER_KELVIN * heat * (2 * c2 + 6 * c3 * s);
    double bend = newton * curvature / (2 * steepness);
    return temperature_K + (Math.abs(bend) < 0.5 ? newton * (1 - bend) : newton);
  }

  @Override
  public double specific(double temperature_K) {
    if (isOutside(temperature_K)) {
      return enthalpy.specific(temperature_K);
    }
    double scaled = scaled(temperature_K);
    int piece = piece(scaled);
    int at = piece * WIDTH;
    return pieces[at + 4] + (scaled - piece) * pieces[at + 5];
  }

  @Override
  public double logarithmicSlope(double temperature_K) {
    return slope(temperature_K) / pressure(temperature_K);
  }

  @Override
  public double lowestTemperature() {
    return ice.lowestTemperature();
  }

  /** A straight guess from the table of guesses, then one cubically converging step. */
  @Override
  public double saturationTemperature(double pressure_Pa) {
    double scaled = (Math.log(pressure_Pa) - LOWEST_LOGARITHM) * PER_LOGARITHM;
    if (!(scaled >= 0 && pressure_Pa <= Water.TRIPLE_POINT_PRESSURE)) {
      return ice.saturationTemperature(pressure_Pa);
    }
    int at = (int) scaled;
    double guess = guesses[at] + (scaled - at) * (guesses[at + 1] - guesses[at]);
    double first = Math.min(guess, Water.TRIPLE_POINT_TEMPERATURE);
    return Math.min(improved(first, 0, 0, pressure_Pa), Water.TRIPLE_POINT_TEMPERATURE);
  }

  private static boolean isOutside(double temperature_K) {
    return !(temperature_K >= COLDEST + 1 && temperature_K <= Water.TRIPLE_POINT_TEMPERATURE);
  }

  private static double scaled(double temperature_K) {
    return (Water.TRIPLE_POINT_TEMPERATURE - temperature_K) * PER_KELVIN;
  }

  private static int piece(double scaled) {
    return (int) scaled;
  }
}
