package org.firnline.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What is printed can be typed back. */
class RoundTripTest {

  /** A kind with a unit people choose for it. */
  record Choice(QuantityKind kind, String unit) {}

  @Provide
  Arbitrary<Choice> choices() {
    return Arbitraries.of(
        new Choice(QuantityKind.TEMPERATURE, "°C"),
        new Choice(QuantityKind.TEMPERATURE, "°F"),
        new Choice(QuantityKind.TEMPERATURE, "K"),
        new Choice(QuantityKind.TEMPERATURE_DIFFERENCE, "°F"),
        new Choice(QuantityKind.PRESSURE, "mTorr"),
        new Choice(QuantityKind.PRESSURE, "mbar"),
        new Choice(QuantityKind.PRESSURE, "µbar"),
        new Choice(QuantityKind.LENGTH, "mm"),
        new Choice(QuantityKind.AREA, "cm2"),
        new Choice(QuantityKind.VOLUME, "mL"),
        new Choice(QuantityKind.MASS, "g"),
        new Choice(QuantityKind.TIME, "h"),
        new Choice(QuantityKind.DENSITY, "g/mL"),
        new Choice(QuantityKind.TEMPERATURE_RATE, "°C/min"),
        new Choice(QuantityKind.MASS_FLOW, "kg/24h"),
        new Choice(QuantityKind.HEAT_TRANSFER, "cal/(s cm2 K)"),
        new Choice(QuantityKind.CAKE_RESISTANCE, "cm2.Torr.h/g"),
        new Choice(QuantityKind.CONDUCTIVITY, "W/m/K"),
        new Choice(QuantityKind.LEAK_RATE, "mbar.L/s"),
        new Choice(QuantityKind.NUMBER, "1"));
  }

  /** Half of the last printed decimal, and the rounding of a double. */
  @Property
  void printedQuantitiesAreReadBack(
      @ForAll("choices") Choice choice,
      @ForAll @DoubleRange(min = 0, max = 250) double value,
      @ForAll @IntRange(min = 0, max = 6) int decimals) {
    Unit unit = Unit.parse(choice.unit());
    double si = Quantity.of(value, unit, choice.kind()).si();
    String printed = Figures.print(si, choice.kind(), unit, decimals);
    double read = Quantity.parse(printed, choice.kind()).in(unit);
    assertThat(read).isCloseTo(value, within(0.5 * Math.pow(10, -decimals) + 1e-11 * (1 + value)));
  }

  @Property
  void conversionsUndoThemselves(
      @ForAll("choices") Choice choice, @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
    Unit unit = Unit.parse(choice.unit());
    assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(1e-9));
    assertThat(unit.differenceFromSi(unit.differenceToSi(value))).isCloseTo(value, within(1e-9));
  }

  /** a/b/c, a/(b c), a b-1 c-1 and a·b⁻¹·c⁻¹ write the same unit. */
  @Property
  void equalUnitsAreReadEqual(
      @ForAll("symbols") String a, @ForAll("symbols") String b, @ForAll("symbols") String c) {
    Unit slashes = Unit.parse(a + "/" + b + "/" + c);
    for (String other :
        new String[] {
          a + "/(" + b + " " + c + ")",
          a + " " + b + "-1 " + c + "-1",
          a + "·" + b + "⁻¹·" + c + "⁻¹",
          a + " / " + b + " / " + c,
          a + "." + c + "^-1." + b + "^-1"
        }) {
      Unit unit = Unit.parse(other);
      assertThat(unit.dimension()).isEqualTo(slashes.dimension());
      assertThat(unit.factor() / slashes.factor()).isCloseTo(1, within(1e-14));
    }
  }

  @Provide
  Arbitrary<String> symbols() {
    return Arbitraries.of("W", "m", "K", "Pa", "Torr", "h", "g", "cm", "cal", "mol", "L", "°F");
  }
}
