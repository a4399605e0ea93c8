package org.firnline.drying.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.QuasiSteadyFront;
import org.firnline.drying.primary.Slab;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.golden.GoldenRow;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Gauge;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

class GaugeTest {

  private static final Gauge CAPACITANCE = new Gauge.Capacitance("diaphragm");
  private static final Gauge WIRE =
      new Gauge.ThermalConductivity(
          "wire", new Estimate(0.6, 0.05, new Provenance.Measured("run 3")));

  @Nested
  class InAMixture {

    @Test
    void readsTheTruthWithADiaphragm() {
      assertThat(GaugeReading.indicated(CAPACITANCE, 10, 1)).isEqualTo(10);
      assertThat(GaugeReading.truePressure(CAPACITANCE, 10, 0.3)).isEqualTo(10);
    }

    @Test
    void readsTooMuchWithAWire() {
      assertThat(GaugeReading.indicated(WIRE, 10, 1)).isCloseTo(16, within(1e-12));
      assertThat(GaugeReading.indicated(WIRE, 10, 0)).isEqualTo(10);
      assertThat(GaugeReading.indicated(WIRE, 10, 0.5)).isCloseTo(13, within(1e-12));
    }

    @Property
    void canBeReadBackwards(
        @ForAll @DoubleRange(min = 1, max = 100) double pressure,
        @ForAll @DoubleRange(min = 0.01, max = 1) double share) {
      double indicated = GaugeReading.indicated(WIRE, pressure, share);
      assertThat(GaugeReading.truePressure(WIRE, indicated, share))
          .isCloseTo(pressure, within(1e-12 * pressure));
      assertThat(GaugeReading.learnedExcess(indicated / pressure, share))
          .isCloseTo(0.6, within(1e-10));
    }

    static Stream<GoldenRow> kinetic() {
      return GoldenRow.of("gauge-kinetic-ratio.csv");
    }

    /** γ of water vapor against nitrogen, 1.4 and 28.0134 g/mol. */
    @ParameterizedTest
    @MethodSource("kinetic")
    void liesNearKineticTheory(GoldenRow row) {
      double ratio = GaugeReading.kineticRatio(Double.parseDouble(row.condition()), 1.4, 0.0280134);
      assertThat(ratio).isCloseTo(row.value(), within(row.tolerance()));
    }

    /** Published factors run from 1.5 to 2.0; what is not learned must cover them. */
    @Test
    void isWideUntilItIsLearned() {
      var unlearned = Gauge.ThermalConductivity.unlearned("new wire");
      assertThat(unlearned.vaporExcess().shifted(2)).isGreaterThanOrEqualTo(1.0);
      assertThat(unlearned.vaporExcess().shifted(-1)).isLessThanOrEqualTo(0.5);
    }

    @Test
    void teachesNothingWithoutVapor() {
      assertThatIllegalArgumentException().isThrownBy(() -> GaugeReading.learnedExcess(1, 0));
      assertThatIllegalArgumentException().isThrownBy(() -> VaporShare.withGas(0, 0));
      assertThatIllegalArgumentException().isThrownBy(() -> VaporShare.withGas(-1, 1));
    }
  }

  /** Case H10: 1000 vials in 40 classes of 25 at the start of drying, pump of 60 m3/h. */
  @Nested
  class OverABatch {

    @ParameterizedTest
    @CsvFileSource(resources = "/golden/gauge-batch-classes.csv", numLinesToSkip = 1)
    void everyClassGivesOffVapor(double heatFactor, double resistanceFactor) {
      assertThat(rate(heatFactor, resistanceFactor)).isBetween(3e-8, 6e-8);
    }

    @Test
    void startsAtTheIndependentRatio() throws java.io.IOException {
      double total = 0;
      try (var lines =
          new java.io.BufferedReader(
              new java.io.InputStreamReader(
                  GaugeTest.class.getResourceAsStream("/golden/gauge-batch-classes.csv"),
                  java.nio.charset.StandardCharsets.UTF_8))) {
        for (String line : lines.lines().skip(1).toList()) {
          String[] factors = line.split(",");
          total += 25 * rate(Double.parseDouble(factors[0]), Double.parseDouble(factors[1]));
        }
      }
      double share = VaporShare.withPump(total, 10, 60.0 / 3600, 293.15);
      assertThat(GaugeReading.indicated(WIRE, 10, share) / 10)
          .isCloseTo(1.5852279422869384, within(1e-6 * 1.585));
    }

    private static double rate(double heatFactor, double resistanceFactor) {
      var solution = new Solution(1019.5, 0.05, 0, new PhaseDensities(917, 1590, 1000), 2.3);
      var slab = Slab.of(solution, 3e-6, 3.801e-4, 4.524e-4);
      var cake = new CakeResistance(4.8e4, 4.8e7, 0).times(resistanceFactor);
      var heat = new HeatTransfer(10, 1.04, 0.0231).times(heatFactor);
      return new QuasiSteadyFront()
          .at(new DryingVessel(slab, cake, 0), HeatSupply.fromShelf(heat, 253.15, 10), 10, 0)
          .rate();
    }
  }

  @Nested
  class TheEndOfDrying {

    private static RatioCurve through(double... timesAndRatios) {
      List<RatioPoint> points = new ArrayList<>();
      for (int i = 0; i < timesAndRatios.length; i += 2) {
        points.add(new RatioPoint(timesAndRatios[i], timesAndRatios[i + 1]));
      }
      return new RatioCurve(points);
    }

    /** A straight fall from 1.6 at 10 h to 1.0 at 20 h: 90, 50, 10 % left at 11, 15, 19 h. */
    @Test
    void isMarkedOnAStraightFall() {
      EndMarks marks = through(0, 1.6, 10, 1.6, 20, 1.0, 30, 1.0).marks();
      assertThat(marks.plateau()).isEqualTo(1.6);
      assertThat(marks.onset().orElseThrow()).isCloseTo(11, within(1e-12));
      assertThat(marks.midpoint().orElseThrow()).isCloseTo(15, within(1e-12));
      assertThat(marks.end().orElseThrow()).isCloseTo(19, within(1e-12));
    }

    /** The last crossing counts, not the first. */
    @Test
    void isNotDeceivedByADip() {
      EndMarks marks = through(0, 1.6, 4, 1.6, 5, 1.1, 6, 1.6, 10, 1.6, 20, 1.0, 30, 1.0).marks();
      assertThat(marks.midpoint().orElseThrow()).isCloseTo(15, within(1e-12));
    }

    @Test
    void mayNotBeReached() {
      EndMarks marks = through(0, 1.6, 10, 1.6, 20, 1.3).marks();
      assertThat(marks.onset()).isPresent();
      assertThat(marks.midpoint()).isEmpty();
      assertThat(marks.end()).isEmpty();
    }

    @Test
    void isNotLookedForWithoutAPlateau() {
      EndMarks marks = through(0, 1.03, 10, 1.0, 20, 1.0).marks();
      assertThat(marks.onset()).isEmpty();
      assertThat(marks.end()).isEmpty();
    }

    /** Pump-down and the secondary ramp lie outside the window. */
    @Test
    void isLookedForInAWindow() {
      RatioCurve curve = through(0, 3, 1, 1.6, 10, 1.6, 20, 1.0, 30, 1.0, 31, 1.5, 40, 1.0);
      EndMarks marks = curve.within(1, 30).marks();
      assertThat(marks.plateau()).isEqualTo(1.6);
      assertThat(marks.end().orElseThrow()).isCloseTo(19, within(1e-12));
    }

    @Test
    void canBeCountedFromAMedianThatNoiseDoesNotLift() {
      RatioCurve plateau = through(0, 1.58, 1, 1.62, 2, 1.60, 3, 1.9, 4, 1.59);
      assertThat(plateau.median()).isEqualTo(1.60);
      assertThat(plateau.greatest()).isEqualTo(1.9);
      assertThat(through(0, 1.5, 1, 1.6).median()).isCloseTo(1.55, within(1e-12));
    }

    @Test
    void needsACurve() {
      assertThatIllegalArgumentException().isThrownBy(() -> through(0, 1.6));
      assertThatIllegalArgumentException().isThrownBy(() -> through(1, 1.6, 0, 1.6));
      assertThatIllegalArgumentException().isThrownBy(() -> new RatioPoint(0, 0));
    }
  }
}
