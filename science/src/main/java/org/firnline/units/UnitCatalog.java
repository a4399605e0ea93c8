package org.firnline.units;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Every simple unit symbol understood on input.
 *
 * <p>Source of the factors: NIST SP 811 (2008), appendix B; the torr is 101325/760 Pa by
 * definition, the calorie is the thermochemical one (4.184 J) unless written {@code cal_IT}.
 * "micron" is read as micron of mercury, one mTorr, as vacuum practice does.
 */
final class UnitCatalog {

  private static final double TORR_PA = 101_325.0 / 760.0;
  private static final double CALORIE_J = 4.184;
  private static final double INTERNATIONAL_CALORIE_J = 4.1868;
  private static final double CELSIUS_ZERO_K = 273.15;
  private static final double FAHRENHEIT_STEP_K = 1 / 1.8;

  private static final Map<String, Unit> UNITS = build();

  private UnitCatalog() {}

  static Optional<Unit> find(String symbol) {
    return Optional.ofNullable(UNITS.get(symbol));
  }

  /** Known symbols that differ from {@code symbol} in capitals only, one for each unit. */
  static List<String> symbolsLike(String symbol) {
    Map<Double, String> byFactor = new TreeMap<>();
    UNITS.forEach(
        (known, unit) -> {
          if (known.equalsIgnoreCase(symbol)) {
            byFactor.putIfAbsent(unit.factor(), known);
          }
        });
    return List.copyOf(byFactor.values());
  }

  private static Map<String, Unit> build() {
    Map<String, Unit> units = new LinkedHashMap<>();
    temperatures(units);
    pressures(units);
    amounts(units);
    times(units);
    energies(units);
    return Collections.unmodifiableMap(units);
  }

  private static void temperatures(Map<String, Unit> units) {
    Dimension kelvin = QuantityKind.TEMPERATURE.dimension();
    add(units, kelvin, 1, 0, "K", "kelvin");
    add(units, kelvin, 1, CELSIUS_ZERO_K, "°C", "degC", "C", "ºC", "℃", "deg C", "celsius");
    add(
        units,
        kelvin,
        FAHRENHEIT_STEP_K,
        CELSIUS_ZERO_K - 32 * FAHRENHEIT_STEP_K,
        "°F",
        "degF",
        "F",
        "ºF",
        "℉",
        "fahrenheit");
  }

  private static void pressures(Map<String, Unit> units) {
    Dimension pressure = QuantityKind.PRESSURE.dimension();
    add(units, pressure, 1, "Pa");
    add(units, pressure, 1e-6, "µPa", "μPa", "uPa");
    add(units, pressure, 0.001, "mPa");
    add(units, pressure, 100, "hPa", "mbar", "mBar", "mb");
    add(units, pressure, 1_000, "kPa");
    add(units, pressure, 1e6, "MPa");
    add(units, pressure, 0.1, "µbar", "μbar", "ubar");
    add(units, pressure, 1e5, "bar");
    add(units, pressure, TORR_PA, "Torr", "torr");
    add(units, pressure, TORR_PA / 1_000, "mTorr", "mtorr", "micron", "microns", "umHg", "µmHg");
    add(units, pressure, 133.322_387_415, "mmHg");
    add(units, pressure, 3_386.389, "inHg");
    add(units, pressure, 101_325, "atm");
    add(units, pressure, 6_894.757_293_168, "psi", "psia");
  }

  private static void amounts(Map<String, Unit> units) {
    Dimension length = QuantityKind.LENGTH.dimension();
    add(units, length, 1, "m");
    add(units, length, 0.01, "cm");
    add(units, length, 0.001, "mm");
    add(units, length, 1e-6, "µm", "μm", "um");
    add(units, length, 0.0254, "in", "inch");
    Dimension volume = QuantityKind.VOLUME.dimension();
    add(units, volume, 0.001, "L", "l");
    add(units, volume, 1e-4, "dL");
    add(units, volume, 1e-5, "cL");
    add(units, volume, 1e-6, "mL", "ml");
    add(units, volume, 1e-9, "µL", "μL", "uL");
    Dimension mass = QuantityKind.MASS.dimension();
    add(units, mass, 1, "kg");
    add(units, mass, 0.001, "g");
    add(units, mass, 1e-6, "mg");
    add(units, mass, 1e-9, "µg", "μg", "ug");
    add(units, mass, 0.453_592_37, "lb");
    add(units, mass, 0.453_592_37 / 16, "oz");
    add(units, Dimension.NONE, 0.01, "%", "percent");
    add(units, Dimension.NONE, 1e-6, "ppm");
    add(units, Dimension.NONE, 1, "1");
    add(units, new Dimension(0, 0, 0, 0, 1), 1, "mol");
  }

  private static void times(Map<String, Unit> units) {
    Dimension time = QuantityKind.TIME.dimension();
    add(units, time, 1, "s", "sec", "second", "seconds");
    add(units, time, 0.001, "ms");
    add(units, time, 60, "min", "minute", "minutes");
    add(units, time, 3_600, "h", "hr", "hour", "hours");
    add(units, time, 86_400, "d", "day", "days");
  }

  private static void energies(Map<String, Unit> units) {
    Dimension energy = new Dimension(2, 1, -2, 0, 0);
    add(units, energy, 1, "J");
    add(units, energy, 1_000, "kJ");
    add(units, energy, 1e6, "MJ");
    add(units, energy, CALORIE_J, "cal", "cal_th");
    add(units, energy, INTERNATIONAL_CALORIE_J, "cal_IT");
    add(units, energy, 1_000 * CALORIE_J, "kcal");
    Dimension power = new Dimension(2, 1, -3, 0, 0);
    add(units, power, 1, "W");
    add(units, power, 0.001, "mW");
    add(units, power, 1_000, "kW");
  }

  private static void add(
      Map<String, Unit> units, Dimension dimension, double factor, String... names) {
    add(units, dimension, factor, 0, names);
  }

  private static void add(
      Map<String, Unit> units, Dimension dimension, double factor, double offset, String... names) {
    for (String name : names) {
      units.put(name, new Unit(name, factor, offset, dimension));
    }
  }
}
