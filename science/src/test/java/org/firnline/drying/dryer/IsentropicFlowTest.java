package org.firnline.drying.dryer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.golden.GoldenRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IsentropicFlowTest {

  static Stream<GoldenRow> published() {
    return GoldenRow.of("isentropic-flow.csv");
  }

  @ParameterizedTest
  @MethodSource("published")
  void meetsPublishedValues(GoldenRow row) {
    assertThat(computed(row)).isCloseTo(row.value(), within(row.tolerance()));
  }

  private static double computed(GoldenRow row) {
    double[] given =
        Arrays.stream(row.condition().split(";")).mapToDouble(Double::parseDouble).toArray();
    var flow = new IsentropicFlow(given[0], given.length > 2 ? given[1] : 287);
    return switch (row.quantity()) {
      case "critical_pressure_ratio" -> flow.criticalRatio();
      case "choked_function" -> flow.chokedFunction();
      case "area_ratio_from_pressure_ratio" -> flow.chokedFunction() / flow.function(given[1]);
      case "choked_mass_flow" -> given[4] * flow.massFlux(given[2], 0, given[3]);
      default -> throw new IllegalArgumentException(row.quantity());
    };
  }

  @Test
  void leavesTheChokedPlateauWithoutAStep() {
    var flow = new IsentropicFlow(1.33, 461.5);
    double critical = flow.criticalRatio();
    assertThat(flow.function(critical * (1 + 1e-9)))
        .isCloseTo(flow.chokedFunction(), within(1e-12));
    assertThat(flow.function(1)).isZero();
  }

  @Property(tries = 200)
  void fallsAsThePressureBehindRises(
      @ForAll @DoubleRange(min = 1.05, max = 1.67) double gamma,
      @ForAll @DoubleRange(min = 0.01, max = 0.98) double ratio) {
    var flow = new IsentropicFlow(gamma, 461.5);
    assertThat(flow.function(ratio + 0.01)).isLessThanOrEqualTo(flow.function(ratio));
  }
}
