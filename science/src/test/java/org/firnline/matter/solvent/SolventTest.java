package org.firnline.matter.solvent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.golden.GoldenRow;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SolventTest {

  private static Solvent named(String name) {
    return Solvents.find(name).orElseThrow();
  }

  @Nested
  class VaporPressure {

    static Stream<GoldenRow> antoine() {
      return GoldenRow.of("solvent-vapor-pressure.csv");
    }

    @ParameterizedTest
    @MethodSource("antoine")
    void meetsPublishedConstants(GoldenRow row) {
      double pressure =
          named(row.quantity()).vaporPressure(row.conditionSi(QuantityKind.TEMPERATURE));
      assertThat(pressure)
          .isCloseTo(row.si(QuantityKind.PRESSURE), within(row.allowed(QuantityKind.PRESSURE)));
    }

    static Stream<Solvent> all() {
      return Solvents.all().stream();
    }

    /** Heat capacity lost on evaporation, at most; in units of R. */
    private static final double LOST_HEAT_CAPACITY = 10;

    /**
     * An independent point of every row: one atmosphere at the boiling point. The heat of
     * vaporization falls on the way, which overstates it by exp(c (x − 1 − ln x)), x = T/T₂₅, where
     * c R is the heat capacity lost, 60 to 80 J/(mol K) for liquids. A tenth is left for the rest.
     */
    @ParameterizedTest
    @MethodSource("all")
    void isOneAtmosphereAtTheBoilingPoint(Solvent solvent) {
      double x = solvent.boilingPoint() / Solvent.ANCHOR_TEMPERATURE;
      double overstated = Math.exp(LOST_HEAT_CAPACITY * (x - 1 - Math.log(x)));
      assertThat(solvent.vaporPressure(solvent.boilingPoint()) / 101_325)
          .as(solvent.name())
          .isBetween(0.9, 1.1 * overstated);
    }

    @Property
    void risesWithTemperature(@ForAll @DoubleRange(min = 180, max = 330) double temperature) {
      assertThat(Solvents.all())
          .allSatisfy(
              solvent ->
                  assertThat(solvent.vaporPressure(temperature + 0.1))
                      .isGreaterThan(solvent.vaporPressure(temperature)));
    }

    @Test
    void hasNoStepAtTheMeltingPoint() {
      assertThat(Solvents.all())
          .allSatisfy(
              solvent -> {
                double above = solvent.vaporPressure(solvent.meltingPoint() + 1e-6);
                double below = solvent.vaporPressure(solvent.meltingPoint() - 1e-6);
                assertThat(below / above).isCloseTo(1, within(1e-5));
              });
    }
  }

  /**
   * Common practice: most solvents are not caught at −50 °C and end in the pump; acids and
   * tert-butanol freeze out on a cold collector. At 10 Pa, which is what a shelf dryer holds.
   */
  @Nested
  class AtACollector {

    @ParameterizedTest
    @CsvSource({
      "acetonitrile, -50, PASSES",
      "ethanol, -50, PASSES",
      "methanol, -50, PASSES",
      "acetone, -50, PASSES",
      "dichloromethane, -50, PASSES",
      "diethyl ether, -85, PASSES",
      "tert-butanol, -50, PARTLY_PASSES",
      "tert-butanol, -85, FREEZES",
      "acetic acid, -85, FREEZES",
      "dimethyl sulfoxide, -50, FREEZES",
      "ethanol, -85, STAYS_LIQUID"
    })
    void isHeldOrNot(String name, double collector_C, Solvent.Trapping expected) {
      assertThat(named(name).trappedAt(collector_C + 273.15, 10)).isEqualTo(expected);
    }
  }

  @Test
  void tellsWhatItDoesToMachinesAndPeople() {
    assertThat(Solvents.all())
        .hasSizeGreaterThan(15)
        .allSatisfy(
            solvent -> {
              assertThat(solvent.materials()).isNotBlank();
              assertThat(solvent.people()).isNotBlank();
              assertThat(solvent.meltingPoint()).isLessThan(solvent.boilingPoint());
            });
    assertThat(Solvents.find(" Ethanol ")).isPresent();
    assertThat(Solvents.find("water")).isEmpty();
  }
}
