package org.firnline.drying.primary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ScheduledDrying;
import org.firnline.drying.recipe.ScheduledRun;

/** Quadrature in depth and steps in time against a general integrator on equations of its own. */
class IndependentIntegrationTest {

  /** Both sides are far more exact; the promise to readers is this. */
  private static final double TIME = 1e-6;

  private static final double TEMPERATURE_K = 1e-4;

  private static final double TRIPLE_POINT_K = 273.16;

  /** Steps in time give up after a year. */
  private static final double LONGEST_WAIT_S = 300 * 86_400.0;

  /** Depths at which a path that has a warmest point inside is looked at. */
  private static final int LOOKS = 5;

  /** Most of the cases must test the time, or the test says little. */
  private static final double LEAST_DRYING_PERCENT = 40;

  private final PrimaryDrying drying = new PrimaryDrying();

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

  @Property(tries = 500)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void agreeOnSlabs(@ForAll("slabs") AdmissibleCases.Case given) {
    check(given);
  }

  @Property(tries = 500)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void agreeOnShells(@ForAll("shells") AdmissibleCases.Case given) {
    check(given);
  }

  @Property(tries = 500)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void agreeOnSlabsWithHeatFromAbove(@ForAll("slabsWithHeatFromAbove") AdmissibleCases.Case given) {
    check(given);
  }

  private void check(AdmissibleCases.Case given) {
    var result = drying.run(given.vessel(), given.supply(), given.pressure_Pa());
    var secondWay = new SecondWay(given);
    String status = result.outcome().status();
    assertThat(Set.of("dries", "melts", "stalls")).contains(status);
    Statistics.collect(status);
    Statistics.coverage(share -> share.check("dries").percentage(p -> p > LEAST_DRYING_PERCENT));
    if (result.outcome() instanceof Outcome.Dries dries) {
      checkDried(given, dries.time(), result.course().orElseThrow(), secondWay);
    } else if (result.outcome() instanceof Outcome.Melts melts) {
      checkMelting(melts, secondWay);
    }
  }

  private static void checkDried(
      AdmissibleCases.Case given,
      double time,
      PrimaryDryingResult.Course course,
      SecondWay secondWay) {
    double thickness = given.vessel().geometry().thickness();
    assertThat(time).isCloseTo(secondWay.timeTo(thickness), within(TIME * time));
    double warmest = 0;
    for (int look = 0; look <= LOOKS; look++) {
      SecondWay.Balance balance = secondWay.at(thickness * look / LOOKS);
      warmest = Math.max(warmest, Math.max(balance.front(), balance.bottom()));
    }
    assertThat(course.warmestPoint()).isGreaterThan(warmest - TEMPERATURE_K);
    near(course.start(), secondWay.at(0));
    near(course.end(), secondWay.at(thickness));
    checkSteps(given, time, course);
  }

  private static void near(FrontState state, SecondWay.Balance balance) {
    assertThat(state.frontTemperature()).isCloseTo(balance.front(), within(TEMPERATURE_K));
    assertThat(state.bottomTemperature()).isCloseTo(balance.bottom(), within(TEMPERATURE_K));
    assertThat(state.rate()).isCloseTo(balance.rate(), within(TIME * balance.rate()));
  }

  private static void checkSteps(
      AdmissibleCases.Case given, double time, PrimaryDryingResult.Course course) {
    if (time > LONGEST_WAIT_S) {
      return;
    }
    ScheduledRun steps =
        ScheduledDrying.quasiSteady(
            given.vessel(),
            new Constant(given.supply()),
            Schedule.constant(250, given.pressure_Pa()));
    assertThat(steps.time()).isCloseTo(time, within(TIME * time));
    assertThat(steps.warmest().value()).isCloseTo(course.warmestPoint(), within(TEMPERATURE_K));
  }

  private static void checkMelting(Outcome.Melts melts, SecondWay secondWay) {
    SecondWay.Balance balance = secondWay.at(melts.depth());
    if (melts.depth() > 0) {
      assertThat(melts.time())
          .isCloseTo(secondWay.timeTo(melts.depth()), within(TIME * melts.time()));
      assertThat(Math.max(balance.front(), balance.bottom()))
          .isCloseTo(TRIPLE_POINT_K, within(TEMPERATURE_K));
    } else {
      assertThat(Math.max(balance.front(), balance.bottom()))
          .isGreaterThan(TRIPLE_POINT_K - TEMPERATURE_K);
    }
  }

  /** The same supply whatever the settings. */
  private record Constant(HeatSupply supply) implements HeatSource {
    @Override
    public HeatSupply at(double shelf_K, double pressure_Pa) {
      return supply;
    }

    @Override
    public HeatSource times(double factor) {
      throw new UnsupportedOperationException("a constant supply has no factor");
    }
  }
}
