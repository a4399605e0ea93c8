package org.firnline.drying.dryer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.lab.Capability;
import org.firnline.lab.Collector;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VaporPathTest {

  private static final double DUCT_AREA = Math.PI / 4 * 0.1 * 0.1;

  /** Fully specified reference case: a duct of 100 mm, γ 1.33, vapor at 0 °C. */
  @ParameterizedTest
  @CsvSource({
    "5, 7.439397415943655e-05, 5.951517932754925e-05",
    "10, 0.0001487879483188731, 0.0001190303586550985",
    "20, 0.0002975758966377462, 0.000238060717310197"
  })
  void aChokedDuctMeetsTheReferenceCase(double pressure, double ideal, double discharged) {
    assertThat(duct(1, 0).rate(pressure)).isCloseTo(ideal, within(1e-9 * ideal));
    assertThat(duct(0.8, 0).rate(pressure)).isCloseTo(discharged, within(1e-9 * discharged));
  }

  private static VaporDuct duct(double discharge, double collectorPressure) {
    return new VaporDuct(DUCT_AREA, discharge, 273.15, 1.33, collectorPressure);
  }

  @Nested
  class NearTheCollectorPressure {

    @Test
    void theDuctCarriesLessAndSaysThatItIsUncertain() {
      var path = new VaporPath(List.of(duct(0.8, 6)), 6);
      assertThat(path.at(10).subsonic()).isTrue();
      assertThat(path.at(10).warning()).isPresent();
      assertThat(path.at(12).subsonic()).isFalse();
      assertThat(path.at(12).warning()).isEmpty();
      assertThat(path.rate(10)).isLessThan(duct(0.8, 0).rate(10));
    }

    @Test
    void nothingPassesAtOrBelowTheFloor() {
      var path = new VaporPath(List.of(duct(0.8, 6)), 6);
      assertThat(path.at(6)).isEqualTo(new CarriedVapor(0, VaporLimit.Part.COLLECTOR, false));
      assertThat(path.rate(5)).isZero();
    }
  }

  @Nested
  class SeveralLimits {

    private final VaporPath path =
        new VaporPath(List.of(new MeasuredLine(2.5e-5, 1), new CollectorRate(1.1e-4)), 0.3);

    @Test
    void theLeastDecidesAndIsNamed() {
      assertThat(path.at(3)).isEqualTo(new CarriedVapor(5e-5, VaporLimit.Part.LINE, false));
      assertThat(path.at(30)).isEqualTo(new CarriedVapor(1.1e-4, VaporLimit.Part.COLLECTOR, false));
    }

    @Test
    void noneMeansThatNothingLimits() {
      assertThat(VaporPath.UNLIMITED.at(10).limitedBy()).isEqualTo(VaporLimit.Part.NOTHING);
      assertThat(VaporPath.UNLIMITED.rate(10)).isInfinite();
    }

    @Property(tries = 200)
    void neverFallsWithPressure(@ForAll @DoubleRange(min = 0.3, max = 600) double pressure) {
      var both = new VaporPath(List.of(duct(0.8, 2), new CollectorRate(1e-3)), 2);
      assertThat(both.rate(pressure * 1.01)).isGreaterThanOrEqualTo(both.rate(pressure));
    }
  }

  @Nested
  class FromTheNounsOfTheLab {

    @Test
    void takesFloorAndLimitsFromTheCollector() {
      var path =
          VaporPath.of(new Capability.Duct(0.02, 0.8, 293.15), new Collector(4, 1e-4, 203.15));
      assertThat(path.floor()).isEqualTo(new WagnerEtAl2011Ice().pressure(203.15));
      assertThat(path.floor()).isCloseTo(0.2617287104154929, within(1e-9));
      assertThat(path.at(100).limitedBy()).isEqualTo(VaporLimit.Part.COLLECTOR);
    }

    @Test
    void leavesOutACollectorRateNobodyKnows() {
      var line = new Capability.Line(1e-5, 2);
      var path = VaporPath.of(line, new Collector(4, Double.POSITIVE_INFINITY, 203.15));
      assertThat(path.limits()).containsExactly(new MeasuredLine(1e-5, 2));
    }
  }
}
