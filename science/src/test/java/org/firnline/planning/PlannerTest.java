package org.firnline.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.Optional;
import org.firnline.drying.primary.PrimaryDrying;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Capability;
import org.firnline.lab.Collector;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.Dryer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Product;
import org.firnline.lab.Range;
import org.firnline.lab.Solution;
import org.firnline.numerics.Normal;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTest {

  private static final Provenance INVENTED = new Provenance.Assumed("invented for this test");
  private static final double CRITICAL = 242.15;

  private final Planner planner = new Planner();

  private static LoadItem load(double critical, int count) {
    var product =
        new Product(
            "invented extract",
            Solution.typical(1019.5, 0.05),
            new CakeResistance(4.8e4, 4.8e7, 0),
            new Estimate(1, 0.2, INVENTED),
            new CriticalTemperature(
                CriticalTemperature.Kind.COLLAPSE, new Estimate(critical, 1.5, INVENTED)));
    return new LoadItem(product, Iso8362Vial.R10.nominal(), 3e-6, count, 0.3);
  }

  private static Dryer dryer(double coldestShelf) {
    return new Dryer(
        "invented dryer",
        new Range(coldestShelf, 313.15),
        new Range(4, 40),
        0.5 / 60,
        new Capability.Duct(Math.PI / 4 * 0.08 * 0.08, 0.8, 293),
        new Collector(4, 1e-3, 213.15));
  }

  private static PlanQuestion question(LoadItem load, Dryer dryer) {
    return new PlanQuestion(load, dryer, Optional.empty(), Optional.empty());
  }

  @Nested
  class RecommendedHold {

    private final PlanAnswer answer = planner.answer(question(load(CRITICAL, 120), dryer(228.15)));

    @Test
    void passesItsOwnChecks() {
      assertThat(answer.recommended()).isTrue();
      assertThat(answer.worst()).isEqualTo(Verdict.PASS);
      assertThat(answer.prediction().overheatingRisk())
          .isLessThanOrEqualTo(HoldFinder.ACCEPTED_RISK);
    }

    @Test
    void isNoSlowerThanAnyAdmissibleHoldOfAFineGrid() {
      PlanQuestion question = answer.question();
      var forecast = new LoadForecast(question.load(), VesselVariation.USUAL);
      var finder = new HoldFinder(question.dryer(), forecast);
      double best = answer.prediction().typicalTime_s().best();
      for (double pressure = 4; pressure <= 40; pressure += 4) {
        for (double shelf = 228.15; shelf <= 313.15; shelf += 2.5) {
          Hold hold = new Hold(shelf, pressure);
          if (finder.admissible(hold)) {
            double time = forecast.time(forecast.typical(), hold);
            assertThat(best).isLessThanOrEqualTo(1.02 * time);
          }
        }
      }
    }

    @Test
    void isTypedInHalfDegreesAndHalfPascals() {
      double celsius = answer.hold().shelf_K() - 273.15;
      assertThat(celsius * 2).isCloseTo(Math.rint(celsius * 2), within(1e-6));
      assertThat(answer.hold().pressure_Pa() * 2)
          .isEqualTo(Math.rint(answer.hold().pressure_Pa() * 2));
    }

    @Test
    void ordersItsTimes() {
      Prediction prediction = answer.prediction();
      assertThat(prediction.lastTime_s().best()).isGreaterThan(prediction.typicalTime_s().best());
      assertThat(prediction.shareOfDoubt().values().stream().mapToDouble(x -> x).sum())
          .isCloseTo(1, within(1e-9));
      var last = prediction.points().get(prediction.points().size() - 1);
      assertThat(last.driedFraction().best()).isEqualTo(1);
      assertThat(last.time_s())
          .isCloseTo(prediction.typicalTime_s().best(), within(1e-4 * last.time_s()));
    }
  }

  @Nested
  class TypicalTime {

    /** The fast vial and the drawn curve against the adaptive quadrature to 1e-12. */
    @ParameterizedTest
    @CsvSource({"253.15, 10", "243.15, 4", "283.15, 20", "233.5, 10"})
    void isThatOfThePreciseQuadrature(double shelf, double pressure) {
      LoadItem load = load(CRITICAL, 1);
      Hold hold = new Hold(shelf, pressure);
      VialCase vial = VialCase.typical(load);
      double precise =
          new PrimaryDrying()
              .run(vial.vessel(), vial.supply(hold), pressure)
              .dryingTime()
              .orElseThrow();
      assertThat(vial.trajectory(hold).time()).isCloseTo(precise, within(1e-6 * precise));
      assertThat(RunCurve.of(vial, hold).end()).isCloseTo(precise, within(1e-5 * precise));
    }
  }

  @Nested
  class StopLines {

    @Test
    void sayThatNothingSublimesOnAShelfColderThanTheIce() {
      var wanted = Optional.of(new Hold(228.15, 10));
      PlanAnswer answer =
          planner.answer(
              new PlanQuestion(load(CRITICAL, 120), dryer(228.15), wanted, Optional.empty()));
      assertThat(line(answer, CheckLine.Subject.SUBLIMATION).verdict()).isEqualTo(Verdict.STOP);
      assertThat(answer.prediction().dries()).isFalse();
      assertThat(answer.checks().get(0).verdict()).isEqualTo(Verdict.STOP);
    }

    @Test
    void sayThatTheProductIsTooWarm() {
      var wanted = Optional.of(new Hold(283.15, 20));
      PlanAnswer answer =
          planner.answer(
              new PlanQuestion(load(CRITICAL, 120), dryer(228.15), wanted, Optional.empty()));
      CheckLine line = line(answer, CheckLine.Subject.PRODUCT_TEMPERATURE);
      assertThat(line.verdict()).isEqualTo(Verdict.STOP);
      assertThat(line.figure("warmest").si()).isGreaterThan(line.figure("limit").si());
    }

    @Test
    void sayThatTheWaterDoesNotFitTheCollector() {
      PlanAnswer answer = planner.answer(question(load(CRITICAL, 2000), dryer(228.15)));
      CheckLine line = line(answer, CheckLine.Subject.COLLECTOR_CAPACITY);
      assertThat(line.verdict()).isEqualTo(Verdict.STOP);
      double water = 2000 * 3e-6 * 1019.5 * 0.95;
      assertThat(line.figure("ice").si()).isCloseTo(water, within(1e-9));
    }

    @Test
    void sayThatNoHoldKeepsAVeryLowLimit() {
      PlanAnswer answer = planner.answer(question(load(215, 120), dryer(243.15)));
      assertThat(answer.worst()).isEqualTo(Verdict.STOP);
    }

    private static CheckLine line(PlanAnswer answer, CheckLine.Subject subject) {
      return answer.checks().stream()
          .filter(line -> line.subject() == subject)
          .findFirst()
          .orElseThrow();
    }
  }

  @Nested
  class Attendance {

    private static final PlanQuestion QUESTION =
        new PlanQuestion(
            load(CRITICAL, 1), dryer(228.15), Optional.of(new Hold(253.15, 10)), Optional.empty());

    /** A Tuesday at 10:00 and 03:40, a Saturday at noon: hours to the next opening at 08:00. */
    @ParameterizedTest
    @CsvSource({
      "2026-11-24T10:00, PASS, 0",
      "2026-11-24T03:40, WATCH, 4.333",
      "2026-11-28T12:00, WATCH, 44"
    })
    void isWatchedAtNightAndAtTheWeekend(LocalDateTime end, Verdict verdict, double wait_h) {
      double time = planner.answer(QUESTION).prediction().lastTime_s().high();
      var start = Optional.of(end.minusSeconds(Math.round(time)));
      PlanAnswer answer =
          planner.answer(
              new PlanQuestion(QUESTION.load(), QUESTION.dryer(), QUESTION.wanted(), start));
      CheckLine line = StopLines.line(answer, CheckLine.Subject.ATTENDANCE);
      assertThat(line.verdict()).isEqualTo(verdict);
      assertThat(line.figure("wait").si() / 3600).isCloseTo(wait_h, within(1e-3));
    }
  }

  @Nested
  class Map {

    private final PlanQuestion question = question(load(CRITICAL, 120), dryer(228.15));
    private final WindowMap map = planner.map(question, 16, 18);

    @Test
    void getsFasterWithAWarmerShelf() {
      for (int column = 0; column < 16; column++) {
        for (int row = 1; row < 18; row++) {
          assertThat(map.dryingTime_s().get(row).get(column))
              .isLessThanOrEqualTo(map.dryingTime_s().get(row - 1).get(column));
        }
      }
    }

    @Test
    void drawsTheLimitWhereTheWarmestVialReachesIt() {
      var forecast = new LoadForecast(question.load(), VesselVariation.USUAL);
      for (int column = 0; column < 16; column++) {
        double pressure = map.pressures_Pa().get(column);
        var band = map.productLimit_K().get(column).orElseThrow();
        assertThat(forecast.warmest(new Hold(band.best(), pressure)).best())
            .isCloseTo(CRITICAL, within(0.05));
        assertThat(band.low()).isLessThan(band.best());
        assertThat(band.high()).isGreaterThan(band.best());
      }
    }
  }

  /** Abramowitz & Stegun, table 26.5 (from memory): 1.644854 at 95 %, 1.281552 at 90 %. */
  @Test
  void normalQuantilesAreThoseOfTheHandbook() {
    assertThat(Normal.quantile(0.95)).isCloseTo(1.644854, within(5e-7));
    assertThat(Normal.quantile(0.90)).isCloseTo(1.281552, within(5e-7));
  }
}
