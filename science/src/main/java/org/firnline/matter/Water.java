package org.firnline.matter;

/** Constants of water that every model here shares; all SI. */
public final class Water {

  /** Universal gas constant, J/(mol K). Source: CODATA 2018, exact by the 2019 SI. */
  public static final double GAS_CONSTANT = 8.314462618;

  /** Molar mass, kg/mol. Source: IAPWS R10-06(2009), as used with R14-08. */
  public static final double MOLAR_MASS = 0.018015268;

  /** Specific gas constant of water vapor, J/(kg K); IAPWS-95 prints 461.51805. */
  public static final double VAPOR_GAS_CONSTANT = GAS_CONSTANT / MOLAR_MASS;

  /** Triple-point temperature, K. Source: IAPWS R14-08(2011). */
  public static final double TRIPLE_POINT_TEMPERATURE = 273.16;

  /**
   * Triple-point pressure, Pa. Source: Guildner, Johnson &amp; Jones, J. Res. NBS 80A, 505 (1976),
   * 611.657 ± 0.010.
   */
  public static final double TRIPLE_POINT_PRESSURE = 611.657;

  /**
   * Enthalpy of fusion at the melting point, J/kg. Source: IAPWS-95 with R10-06 at 273.1525 K,
   * 333.43 kJ/kg.
   */
  public static final double FUSION_ENTHALPY = 333.4e3;

  /** Ice density used unless a plan says otherwise, kg/m3. Source: IAPWS R10-06 at 0 °C, 916.7. */
  public static final double ICE_DENSITY = 917.0;

  /** Liquid water density near room temperature, kg/m3, rounded. Source: IAPWS SR6-08, 997.05. */
  public static final double LIQUID_DENSITY = 1_000.0;

  /**
   * Heat-capacity ratio of water vapor. Source: ideal-gas part of IAPWS-95, 1.330 at 273 K and
   * 1.329 at 298 K.
   */
  public static final double VAPOR_HEAT_CAPACITY_RATIO = 1.33;

  private Water() {}
}
