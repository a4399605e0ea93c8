package org.firnline.drying.primary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FastPrimaryDryingTest {

  /** Promised agreement with the readable form. */
  private static final double TIME = 1e-6;

  private static final double TEMPERATURE_K = 1e-4;

  private final PrimaryDrying readable = new PrimaryDrying();

  @Provide
  Arbitrary<AdmissibleCases.Case> slabs() {
    return AdmissibleCases.slabs();
  }

  @Provide
  Arbitrary<AdmissibleCases.Case> shells() {
    return AdmissibleCases.shells();
  }

  @Provide
  Arbitrary<AdmissibleCases.Case> slabsWithHeatFromAbove() {
    return AdmissibleCases.slabsWithHeatFromAbove();
  }

  @Property(tries = 1000)
  void saysOfSlabsWhatTheReadableFormSays(@ForAll("slabs") AdmissibleCases.Case given) {
    check(given);
  }

  @Property(tries = 500)
  void saysOfShellsWhatTheReadableFormSays(@ForAll("shells") AdmissibleCases.Case given) {
    check(given);
  }

  @Property(tries = 500)
  void saysOfHeatFromAboveWhatTheReadableFormSays(
      @ForAll("slabsWithHeatFromAbove") AdmissibleCases.Case given) {
    check(given);
  }

  private void check(AdmissibleCases.Case given) {
    PrimaryDryingResult slow = readable.run(given.vessel(), given.supply(), given.pressure_Pa());
    VialTrajectory fast =
        FastPrimaryDrying.run(given.vessel(), given.supply(), given.pressure_Pa());
    if (slow.outcome() instanceof Outcome.Melts) {
      assertThat(fast.ending()).isEqualTo(VialTrajectory.Ending.MELTS);
      return;
    }
    var course = slow.course().orElseThrow();
    double time = slow.dryingTime().orElseThrow();
    if (slow.outcome() instanceof Outcome.Dries) {
      assertThat(fast.ending()).isEqualTo(VialTrajectory.Ending.DRIES);
      assertThat(fast.time()).isCloseTo(time, within(TIME * time));
      near(fast.endRate(), course.end().rate());
    } else {
      assertThat(fast.ending()).isEqualTo(VialTrajectory.Ending.STALLS);
      assertThat(fast.time()).isInfinite();
    }
    assertThat(fast.warmest()).isCloseTo(course.warmestPoint(), within(TEMPERATURE_K));
    near(fast.startRate(), course.start().rate());
    near(fast.peakRate(), course.peakRate());
  }

  private static void near(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(TIME * expected));
  }

  @Test
  void meetsTheReferenceCase() {
    var vessel =
        new DryingVessel(
            new Slab(0.0029055750000000005, 0.008589174483798324, 3.801e-4, 4.524e-4, 2.3),
            new CakeResistance(4.8e4, 4.8e7, 0),
            0);
    var supply = HeatSupply.fromShelf(new HeatTransfer(10, 1.04, 0.0231), 253.15, 10);
    VialTrajectory fast = FastPrimaryDrying.run(vessel, supply, 10);
    near(fast.time(), 87213.7965077456);
    assertThat(fast.warmest()).isCloseTo(244.13606996177646, within(TEMPERATURE_K));
    near(fast.peakRate(), 4.877907990894742e-08);
  }

  @ParameterizedTest
  @CsvSource({"228.15, 10, NOTHING_SUBLIMES", "253.15, 700, ABOVE_TRIPLE_POINT"})
  void saysWhyNothingDries(double shelf, double pressure, VialTrajectory.Ending ending) {
    var vessel =
        new DryingVessel(new Slab(3e-3, 0.009, 4e-4, 5e-4, 2.3), new CakeResistance(5e4, 0, 0), 0);
    var supply = new HeatSupply(20, shelf, HeatSupply.Above.NONE);
    assertThat(FastPrimaryDrying.run(vessel, supply, pressure).ending()).isEqualTo(ending);
  }
}
