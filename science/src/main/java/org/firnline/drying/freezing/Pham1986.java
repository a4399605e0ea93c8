package org.firnline.drying.freezing;

/**
 * Freezing time of food with its sensible heat, by splitting the heat at a mean freezing
 * temperature: t = d/(E h) (ΔH₁/ΔT₁ + ΔH₂/ΔT₂)(1 + Bi/2).
 *
 * <p>T_fm = 1.8 + 0.263 T_c + 0.105 T_a (°C); ΔH₁ = ρ c_u (T_i − T_fm); ΔH₂ = ρ (L + c_f (T_fm −
 * T_c)); ΔT₁ = (T_i + T_fm)/2 − T_a; ΔT₂ = T_fm − T_a; Bi = h d/k.
 *
 * <p>Valid: moist food, mediums −15 to −45 °C, center temperatures −15 °C and lower; about ±10 %.
 *
 * <p>Source: Pham, J. Food Technol. 21, 209 (1986) (equations from memory, citation found).
 *
 * @param density kg/m3; positive
 * @param unfrozenHeat c_u, J/(kg K); positive
 * @param frozenHeat c_f, J/(kg K); positive
 * @param latent L: heat set free per mass of food, J/kg; positive
 * @param conductivity of the frozen food, W/(m K); positive
 */
public record Pham1986(
    double density, double unfrozenHeat, double frozenHeat, double latent, double conductivity) {

  /** The mean freezing temperature is a fit in degrees Celsius. */
  private static final double FIT_CONSTANT = 1.8;

  private static final double PER_CENTER = 0.263;
  private static final double PER_MEDIUM = 0.105;

  public Pham1986 {
    if (!(density > 0) || !(conductivity > 0) || !(latent > 0)) {
      throw new IllegalArgumentException("density, latent heat and conductivity must be positive");
    }
    if (!(unfrozenHeat >= 0) || !(frozenHeat >= 0)) {
      throw new IllegalArgumentException("heat capacities must not be negative");
    }
  }

  /**
   * Temperatures of one freezing, in degrees Celsius as the fit wants them.
   *
   * @param start_degC of the food
   * @param center_degC wanted at its center; below 0
   * @param medium_degC around it; below the mean freezing temperature
   */
  public record Temperatures(double start_degC, double center_degC, double medium_degC) {

    /** T_fm, °C. */
    public double meanFreezing_degC() {
      return FIT_CONSTANT + PER_CENTER * center_degC + PER_MEDIUM * medium_degC;
    }
  }

  /**
   * Freezing time, s.
   *
   * @param halfThickness d: half of a slab's thickness, or the radius, m
   * @param dimensions E: 1 slab, 2 long cylinder, 3 sphere
   * @param coefficient h on the surface, W/(m2 K)
   */
  public double time(
      double halfThickness, int dimensions, double coefficient, Temperatures temperatures) {
    double mean = temperatures.meanFreezing_degC();
    double medium = temperatures.medium_degC();
    double before = density * unfrozenHeat * (temperatures.start_degC() - mean);
    double after = density * (latent + frozenHeat * (mean - temperatures.center_degC()));
    double driveBefore = (temperatures.start_degC() + mean) / 2 - medium;
    double driveAfter = mean - medium;
    if (!(driveAfter > 0) || !(driveBefore > 0)) {
      throw new IllegalArgumentException(
          "a medium at " + medium + " °C does not freeze food at " + mean + " °C");
    }
    double biot = coefficient * halfThickness / conductivity;
    return halfThickness
        / (dimensions * coefficient)
        * (before / driveBefore + after / driveAfter)
        * (1 + biot / 2);
  }
}
