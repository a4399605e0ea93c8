package org.firnline.matter.solute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.golden.GoldenRow;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GordonTaylorTest {

  private static final GordonTaylor1952 SUCROSE = new GordonTaylor1952(335.15, 4.7);

  static Stream<GoldenRow> worked() {
    return GoldenRow.of("gordon-taylor.csv");
  }

  /** Conditions read "lactose Tg 101 degC, k 6.7, water 138.15 K, w 0.0636704". */
  private static final Pattern CONDITION =
      Pattern.compile(
          "\\S+ (?:Tg )?(\\S+ \\S+),(?: water (\\S+) K,)? k (\\S+),(?: water (\\S+) K,)? w (\\S+)");

  @ParameterizedTest
  @MethodSource("worked")
  void meetsWorkedExamples(GoldenRow row) {
    Matcher parts = CONDITION.matcher(row.condition());
    assertThat(parts.matches()).as(row.condition()).isTrue();
    double dry = Quantity.parse(parts.group(1), QuantityKind.TEMPERATURE).si();
    String water = parts.group(2) == null ? parts.group(4) : parts.group(2);
    var model =
        new GordonTaylor1952(dry, Double.parseDouble(parts.group(3)), Double.parseDouble(water));
    assertThat(model.at(Double.parseDouble(parts.group(5))))
        .isCloseTo(row.si(QuantityKind.TEMPERATURE), within(row.allowed(QuantityKind.TEMPERATURE)));
  }

  /** Roos (2002): lactose with 6.8 g water per 100 g has its transition at about 24 °C, ± 3 K. */
  @Test
  void comesNearAMeasurementOfMoistLactose() {
    var lactose = new GordonTaylor1952(374.15, 6.7);
    assertThat(lactose.at(0.0636704) - 273.15).isCloseTo(24, within(3.2));
  }

  @Nested
  class Laws {

    @Property
    void waterSoftens(
        @ForAll @DoubleRange(min = 0, max = 0.9) double water,
        @ForAll @DoubleRange(min = 1e-6, max = 0.1) double more) {
      assertThat(SUCROSE.at(water + more)).isLessThan(SUCROSE.at(water));
    }

    @Property
    void theMoistureIsTheInverse(@ForAll @DoubleRange(min = 1e-4, max = 2) double moisture) {
      assertThat(SUCROSE.moistureAt(SUCROSE.atMoisture(moisture)))
          .isCloseTo(moisture, within(1e-12 * (1 + moisture)));
    }

    @Test
    void theEndsArePureSubstances() {
      assertThat(SUCROSE.at(0)).isEqualTo(335.15);
      assertThat(SUCROSE.at(1)).isEqualTo(GordonTaylor1952.WATER_TRANSITION);
      assertThat(SUCROSE.moistureAt(335.15)).isZero();
    }
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> new GordonTaylor1952(0, 4.7));
    assertThatIllegalArgumentException().isThrownBy(() -> new GordonTaylor1952(335, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> SUCROSE.at(1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> SUCROSE.atMoisture(-0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> SUCROSE.moistureAt(340));
    assertThatIllegalArgumentException().isThrownBy(() -> SUCROSE.moistureAt(130));
  }
}
