package org.firnline.planning.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.firnline.drying.primary.VialTrajectory;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Flask;
import org.firnline.planning.Verdict;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked examples of practice: derived there by hand from textbook physics, so each holds to its
 * own digits.
 */
class OneMinuteAnswersTest {

  private static final Provenance INVENTED = new Provenance.Assumed("invented for this test");
  private static final double HOUR = 3600;
  private static final double ROOM = 295.15;

  private static Estimate exact(double value) {
    return new Estimate(value, 0, INVENTED);
  }

  @Nested
  class TwoHundredMillilitersInAOneLiterFlask {

    private final FlaskLayers flask = new FlaskLayers(200e-6, 1e-3, 2.0 / 3);

    @Test
    void the_sphere_has_a_radius_of_62_mm() {
      assertThat(flask.radius()).isCloseTo(0.062, within(0.0005));
    }

    @Test
    void frozen_on_two_thirds_of_the_wall_it_has_0_032_m2_and_if_the_wall_were_flat_6_8_mm() {
      FlaskLayers frozen = new FlaskLayers(200e-6 / 0.917, 1e-3, 2.0 / 3);
      assertThat(frozen.shell().heatArea()).isCloseTo(0.032, within(0.0005));
      assertThat(frozen.shell().meanThickness()).isCloseTo(0.0068, within(0.00005));
    }

    @Test
    void frozen_as_it_stood_it_is_36_mm_deep_on_0_0139_m2() {
      assertThat(flask.puddle().thickness()).isCloseTo(0.036, within(0.0005));
      assertThat(flask.puddle().heatArea()).isCloseTo(0.0139, within(0.00005));
    }

    @Test
    void the_shell_is_heated_over_2_3_times_the_area() {
      assertThat(flask.gain()).isCloseTo(2.3, within(0.05));
    }

    @Test
    void the_puddle_is_too_deep_and_the_shell_is_not() {
      assertThat(flask.puddleVerdict()).isEqualTo(Verdict.STOP);
      assertThat(flask.shellVerdict()).isEqualTo(Verdict.PASS);
      assertThat(FlaskLayers.verdict(0.015)).isEqualTo(Verdict.WATCH);
    }

    @ParameterizedTest
    @CsvSource({"5,23,54", "7,17,39", "10,12,27"})
    void the_heat_alone_takes_so_many_hours(double coefficient, double shell, double puddle) {
      assertThat(hours(flask.shell(), coefficient)).isCloseTo(shell, within(0.5));
      assertThat(hours(flask.puddle(), coefficient)).isCloseTo(puddle, within(0.8));
    }

    private double hours(IceLayer layer, double coefficient) {
      return howLong(layer, exact(coefficient)).heatLimited(ROOM - 42) / HOUR;
    }

    @Test
    void the_layers_hold_the_volume_that_went_in() {
      double radius = flask.radius();
      double inner = radius - flask.shell().thickness();
      double shell = 2.0 / 3 * 4 / 3 * Math.PI * (Math.pow(radius, 3) - Math.pow(inner, 3));
      double h = flask.puddle().thickness();
      double rim = Math.sqrt(h * (2 * radius - h));
      double cap = Math.PI * h / 6 * (3 * rim * rim + h * h);
      assertThat(shell).isCloseTo(200e-6, within(1e-15));
      assertThat(cap).isCloseTo(200e-6, within(1e-15));
    }
  }

  private static HowLong howLong(IceLayer layer, Estimate coefficient) {
    return new HowLong(
        layer, 0.2, coefficient, ROOM, 10, HowLong.USUAL_CAKE, HowLong.USUAL_CAKE_FACTOR);
  }

  @Nested
  class HowLongItTakes {

    private final IceLayer shell = new FlaskLayers(218e-6, 1e-3, 2.0 / 3).shell();

    @Test
    void the_band_of_the_whole_answer_lies_above_the_time_of_heat_alone_at_the_coldest_ice() {
      HowLong question = howLong(shell, Flask.TYPICAL_ROOM_HEAT_TRANSFER);
      HowLong.Answer answer = question.answer();
      assertThat(answer.dries()).isTrue();
      assertThat(answer.time_s().best()).isGreaterThan(question.heatLimited(230));
      assertThat(answer.time_s().low()).isLessThan(answer.time_s().best() * 0.9);
      assertThat(answer.time_s().high()).isGreaterThan(answer.time_s().best() * 1.1);
      assertThat(answer.warmest_K().best()).isBetween(240.0, 273.16);
    }

    @Test
    void without_doubt_and_without_a_cake_it_is_the_heat_of_the_ice_at_the_threshold() {
      HowLong question =
          new HowLong(
              IceLayer.flat(1e-4, 1e-2),
              0.0917,
              exact(10),
              250,
              10,
              new CakeResistance(1e-3, 0, 0),
              exact(1));
      double atThreshold = new PressureReach(250, 220, 10).coldestDrying_K();
      double layers = 1 + 10 * 0.01 / 2 / 2.3;
      assertThat(question.answer().time_s().best())
          .isCloseTo(question.heatLimited(atThreshold) * layers, within(20.0));
      assertThat(question.answer().time_s().halfWidth()).isZero();
    }

    @Test
    void ice_colder_than_its_threshold_never_goes() {
      HowLong question =
          new HowLong(shell, 0.2, exact(7), 225, 10, HowLong.USUAL_CAKE, HowLong.USUAL_CAKE_FACTOR);
      assertThat(question.answer().dries()).isFalse();
      assertThat(question.answer().time_s().low()).isInfinite();
      assertThat(question.heatLimited(230)).isInfinite();
    }

    @Test
    void ice_that_melts_first_is_called_so() {
      HowLong question =
          new HowLong(
              shell, 0.2, exact(200), 350, 300, HowLong.USUAL_CAKE, HowLong.USUAL_CAKE_FACTOR);
      assertThat(question.answer().ending()).isEqualTo(VialTrajectory.Ending.MELTS);
      assertThat(question.answer().warmest_K().best()).isInfinite();
    }
  }

  @Nested
  class PressureAgainstTheCollector {

    @Test
    void a_collector_of_minus_42_degrees_keeps_0_10_mbar() {
      assertThat(new PressureReach(253.15, 231.15, 15).floor_Pa()).isCloseTo(10, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({
      "-30,-60,10,REACHED",
      "-30,-42,10.5,COLLECTOR_NEAR",
      "-30,-38,10,COLLECTOR_TOO_WARM",
      "-30,-60,40,NOTHING_SUBLIMES",
      "-30,-60,20,PRESSURE_HIGH",
      "-30,-50,2,BELOW_COLLECTOR_FLOOR"
    })
    void every_case_has_its_finding(
        double product, double collector, double pressure, PressureReach.Finding finding) {
      PressureReach reach = new PressureReach(product + 273.15, collector + 273.15, pressure);
      assertThat(reach.finding()).isEqualTo(finding);
      assertThat(finding.verdict()).isNotNull();
      assertThat(reach.usualLow_Pa()).isLessThan(reach.usualHigh_Pa());
    }
  }

  @Nested
  class WaterAgainstTheCollector {

    private final CollectorFit vials =
        new CollectorFit(200, 5e-3, 0.05, 24 * HOUR, 4, 2.0 / (24 * HOUR));

    @Test
    void two_hundred_vials_of_5_mL_at_5_percent_solids_hold_950_g_of_water() {
      assertThat(vials.water_kg()).isCloseTo(0.950, within(1e-12));
    }

    @Test
    void at_twice_the_mean_rate_they_take_1_9_kg_a_day() {
      assertThat(vials.peakRate_kg_per_s() * 24 * HOUR).isCloseTo(1.9, within(1e-12));
      assertThat(vials.amountVerdict()).isEqualTo(Verdict.PASS);
      assertThat(vials.rateVerdict()).isEqualTo(Verdict.WATCH);
      assertThat(vials.mostVessels()).isEqualTo(210);
    }

    @Test
    void more_than_the_collector_holds_is_a_stop() {
      CollectorFit small =
          new CollectorFit(200, 5e-3, 0.05, 24 * HOUR, 0.5, Double.POSITIVE_INFINITY);
      assertThat(small.amountVerdict()).isEqualTo(Verdict.STOP);
      assertThat(small.rateShare()).isZero();
      assertThat(small.mostVessels()).isEqualTo(105);
    }
  }

  @Nested
  class WarmUpAfterAFailure {

    /** 200 g of ice, 0.22 W/K: time constant 30 min, from −25 to −10 °C in 11 min. */
    private final WarmUpTime flask =
        new WarmUpTime(0.2, 0.22 / 7, new Estimate(7, 1.5, INVENTED), 248.15, 263.15, ROOM);

    @Test
    void a_flask_of_200_g_has_a_time_constant_of_30_minutes() {
      assertThat(flask.timeConstant_s() / 60).isCloseTo(30, within(0.5));
    }

    @Test
    void it_warms_from_minus_25_to_minus_10_degrees_in_11_minutes() {
      assertThat(flask.time_s().best() / 60).isCloseTo(11, within(0.5));
      assertThat(flask.time_s().low()).isLessThan(flask.time_s().best());
      assertThat(flask.temperature_K(flask.time_s().best())).isCloseTo(263.15, within(1e-9));
    }

    @Test
    void product_already_too_warm_has_no_time_left() {
      WarmUpTime warm =
          new WarmUpTime(0.2, 0.03, new Estimate(7, 1.5, INVENTED), 265, 263.15, ROOM);
      assertThat(warm.time_s().high()).isZero();
    }
  }

  @Nested
  class ATrayThatIsNotLevel {

    @Test
    void one_degree_over_300_mm_is_5_2_mm() {
      TrayLevel tray = new TrayLevel(0.3, Math.toRadians(1), 0.010);
      assertThat(tray.difference()).isCloseTo(0.0052, within(0.00005));
      assertThat(tray.deepest()).isCloseTo(0.0126, within(0.00005));
      assertThat(tray.timeFactor()).isCloseTo(1.59, within(0.01));
      assertThat(tray.verdict()).isEqualTo(Verdict.WATCH);
    }

    @Test
    void a_thin_layer_runs_to_one_end_as_a_wedge_of_the_same_volume() {
      TrayLevel tray = new TrayLevel(0.3, Math.toRadians(1), 0.002);
      double wet = tray.deepest() / Math.tan(Math.toRadians(1));
      assertThat(tray.deepest() * wet / 2).isCloseTo(0.3 * 0.002, within(1e-12));
      assertThat(tray.verdict()).isEqualTo(Verdict.STOP);
    }

    @Test
    void a_level_tray_passes() {
      assertThat(new TrayLevel(0.3, 0, 0.01).verdict()).isEqualTo(Verdict.PASS);
    }
  }

  @Test
  void nonsense_is_refused_in_words_that_say_what_would_be_right() {
    assertRefused(() -> new FlaskLayers(600e-6, 1e-3, 0.5), "more than half");
    assertRefused(() -> new FlaskLayers(200e-6, 1e-3, 0.15), "does not hold the sample");
    assertRefused(() -> new FlaskLayers(200e-6, 1e-3, 0), "above 0 and at most 1");
    assertRefused(() -> new PressureReach(280, 230, 10), "that of ice");
    assertRefused(() -> new CollectorFit(1, 1, 1, 1, 1, 1), "below 1");
    assertRefused(() -> new CollectorFit(1, 1, 0, 1, 1, 0), "above 0");
    assertRefused(() -> new TrayLevel(0.3, 2, 0.01), "right angle");
    assertRefused(() -> IceLayer.flat(1e-4, 0), "above 0");
  }

  private static void assertRefused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable door, String words) {
    assertThatThrownBy(door).isInstanceOf(InvalidInputException.class).hasMessageContaining(words);
  }
}
