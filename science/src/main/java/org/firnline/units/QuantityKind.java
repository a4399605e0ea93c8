package org.firnline.units;

/**
 * What a number means: the kinds of quantity people type into and read from this program. Each kind
 * fixes the dimension that a typed unit must have, and the SI unit in which the program keeps it.
 */
public enum QuantityKind {
  /** Thermodynamic temperature; degrees Celsius and Fahrenheit are shifted, not only scaled. */
  TEMPERATURE("temperature", "K", new Dimension(0, 0, 0, 1, 0), "-32 °C"),
  /** Difference of two temperatures; never shifted. */
  TEMPERATURE_DIFFERENCE("temperature difference", "K", new Dimension(0, 0, 0, 1, 0), "2 K"),
  /** Absolute pressure. */
  PRESSURE("pressure", "Pa", new Dimension(-1, 1, -2, 0, 0), "80 mTorr"),
  LENGTH("length", "m", new Dimension(1, 0, 0, 0, 0), "24 mm"),
  AREA("area", "m2", new Dimension(2, 0, 0, 0, 0), "3.8 cm2"),
  VOLUME("volume", "m3", new Dimension(3, 0, 0, 0, 0), "3 mL"),
  MASS("mass", "kg", new Dimension(0, 1, 0, 0, 0), "3 g"),
  TIME("time", "s", new Dimension(0, 0, 1, 0, 0), "30 min"),
  /** Mass per volume. */
  DENSITY("density", "kg/m3", new Dimension(-3, 1, 0, 0, 0), "1.02 g/mL"),
  /** A share of a whole, kept between 0 and 1 and typed as percent or as a plain number. */
  FRACTION("fraction", "1", Dimension.NONE, "5 %"),
  /** A plain number. */
  NUMBER("number", "1", Dimension.NONE, "0.8"),
  /** Change of temperature with time. */
  TEMPERATURE_RATE("temperature ramp", "K/s", new Dimension(0, 0, -1, 1, 0), "0.5 K/min"),
  /** Mass of water moved per time. */
  MASS_FLOW("mass flow", "kg/s", new Dimension(0, 1, -1, 0, 0), "2 kg/d"),
  /** Heat flow per area and temperature difference. */
  HEAT_TRANSFER(
      "heat-transfer coefficient", "W/(m2 K)", new Dimension(0, 1, -3, -1, 0), "10 W/m2/K"),
  /** Growth of a heat-transfer coefficient with pressure. */
  HEAT_TRANSFER_PER_PRESSURE(
      "heat-transfer coefficient per pressure",
      "W/(m2 K Pa)",
      new Dimension(1, 0, -1, -1, 0),
      "1.04 W/m2/K/Pa"),
  PER_PRESSURE("inverse pressure", "1/Pa", new Dimension(1, -1, 2, 0, 0), "0.023 1/Pa"),
  /** Resistance of dried cake to vapor, {@code Pa m2 s/kg}, which is a velocity. */
  CAKE_RESISTANCE("cake resistance", "m/s", new Dimension(1, 0, -1, 0, 0), "1 cm2.Torr.h/g"),
  /** Growth of the cake resistance with dried depth. */
  CAKE_RESISTANCE_PER_DEPTH(
      "cake resistance per depth", "1/s", new Dimension(0, 0, -1, 0, 0), "10 cm.Torr.h/g"),
  PER_LENGTH("inverse length", "1/m", new Dimension(-1, 0, 0, 0, 0), "1 1/cm"),
  PER_TIME("inverse time", "1/s", new Dimension(0, 0, -1, 0, 0), "670 1/s"),
  CONDUCTIVITY("thermal conductivity", "W/(m K)", new Dimension(1, 1, -3, -1, 0), "2.3 W/m/K"),
  /** Pressure drop per mass flow through a stopper, neck or port. */
  MOUTH_RESISTANCE("mouth resistance", "Pa s/kg", new Dimension(-1, 0, -1, 0, 0), "5e7 Pa.s/kg"),
  HEAT_CAPACITY("heat capacity", "J/K", new Dimension(2, 1, -2, -1, 0), "4 J/K"),
  SPECIFIC_ENERGY("specific energy", "J/kg", new Dimension(2, 0, -2, 0, 0), "333 kJ/kg"),
  MOLAR_ENERGY("molar energy", "J/mol", new Dimension(2, 1, -2, 0, -1), "40 kJ/mol"),
  /** Slope of a capability line, mass flow carried per chamber pressure. */
  MASS_FLOW_PER_PRESSURE(
      "mass flow per pressure", "kg/(s Pa)", new Dimension(1, 0, 1, 0, 0), "0.03 kg/h/Pa"),
  /** Pressure times volume per time: the throughput of a leak. */
  LEAK_RATE("leak rate", "Pa m3/s", new Dimension(2, 1, -3, 0, 0), "0.02 mbar.L/s"),
  VOLUME_FLOW("volume flow", "m3/s", new Dimension(3, 0, -1, 0, 0), "20 m3/h"),
  /** Change of pressure with time. */
  PRESSURE_RATE("pressure rise", "Pa/s", new Dimension(-1, 1, -3, 0, 0), "0.01 Pa/min"),
  /** Mass of water moved per area and time. */
  MASS_FLUX("mass flux", "kg/(m2 s)", new Dimension(-2, 1, -1, 0, 0), "0.5 kg/h/m2"),
  VISCOSITY("viscosity", "Pa s", new Dimension(-1, 1, -1, 0, 0), "0.009 mPa s"),
  SPECIFIC_HEAT("specific heat", "J/(kg K)", new Dimension(2, 0, -2, -1, 0), "2.1 kJ/kg/K"),
  MOLAR_MASS("molar mass", "kg/mol", new Dimension(0, 1, 0, 0, -1), "18 g/mol");

  private final String label;
  private final String siUnit;
  private final Dimension dimension;
  private final String example;

  QuantityKind(String label, String siUnit, Dimension dimension, String example) {
    this.label = label;
    this.siUnit = siUnit;
    this.dimension = dimension;
    this.example = example;
  }

  /** The name of this kind in a sentence, for instance "chamber pressure must be a pressure". */
  public String label() {
    return label;
  }

  /** The SI unit in which numbers of this kind are kept. */
  public String siUnit() {
    return siUnit;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** A well-formed example, shown in messages. */
  public String example() {
    return example;
  }
}
