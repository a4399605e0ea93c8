package org.firnline.drying.freezing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.firnline.drying.recipe.Track;
import org.firnline.lab.Solution;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FreezingTest {

  private static final double ZERO_CELSIUS = 273.15;
  private static final double HOUR = 3600;

  private final VesselFreezing freezing = new VesselFreezing();

  @Nested
  class Pham {

    /** Without sensible heat the method is Plank's at the mean freezing temperature, any shape. */
    @ParameterizedTest
    @CsvSource({"1, SLAB", "2, CYLINDER", "3, SPHERE"})
    void tendsToPlank(int dimensions, Plank1913.Shape shape) {
      var temperatures = new Pham1986.Temperatures(4, -18, -35);
      var plank =
          new Plank1913(
              1000 * 250e3,
              ZERO_CELSIUS + temperatures.meanFreezing_degC(),
              ZERO_CELSIUS - 35,
              40,
              1.5);
      double expected = plank.allSides(shape, 0.06);
      double time = new Pham1986(1000, 0, 0, 250e3, 1.5).time(0.03, dimensions, 40, temperatures);
      assertThat(time).isCloseTo(expected, within(1e-12 * expected));
    }

    /** T_fm = 1.8 + 0.263 (−18) + 0.105 (−35) = −6.609 °C; the rest is arithmetic by hand. */
    @Test
    void addsSensibleHeat() {
      var temperatures = new Pham1986.Temperatures(4, -18, -35);
      assertThat(temperatures.meanFreezing_degC()).isCloseTo(-6.609, within(1e-12));
      double before = 1000 * 3600 * 10.609 / (-1.3045 + 35);
      double after = 1000 * (250e3 + 1900 * 11.391) / 28.391;
      double expected = 0.03 / 40 * (before + after) * (1 + 40 * 0.03 / 1.5 / 2);
      assertThat(new Pham1986(1000, 3600, 1900, 250e3, 1.5).time(0.03, 1, 40, temperatures))
          .isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void refusesWarmMediums() {
      var food = new Pham1986(1000, 3600, 1900, 250e3, 1.5);
      var warm = new Pham1986.Temperatures(4, -5, 2);
      assertThatIllegalArgumentException().isThrownBy(() -> food.time(0.03, 1, 40, warm));
      assertThatIllegalArgumentException().isThrownBy(() -> new Pham1986(0, 1, 1, 1, 1));
      assertThatIllegalArgumentException().isThrownBy(() -> new Pham1986(1, -1, 1, 1, 1));
    }
  }

  /** A 10R vial with 3 mL, 25 W/(m2 K) at atmospheric pressure. */
  @Nested
  class OneVessel {

    private final FreezingVessel vial =
        FreezingVessel.of(Solution.typical(1020, 0.05), 3e-6, 3.801e-4, 30, 1.5, 272.65);

    private List<Double> every(double step, int count) {
      return IntStream.rangeClosed(0, count).mapToObj(i -> i * step).toList();
    }

    /** Without a ramp and without supercooling the front takes Plank's time. */
    @Test
    void freezesInPlanksTime() {
      FreezingCourse course =
          freezing.course(vial, Track.constant(233.15), 293.15, 272.65, every(60, 200));
      double latentPerVolume = vial.latentHeat() / (vial.area() * vial.depth());
      double plank =
          new Plank1913(latentPerVolume, 272.65, 233.15, 30, vial.conductivity())
              .oneSided(vial.depth());
      double took = course.frozenTime().orElseThrow() - course.nucleationTime().orElseThrow();
      assertThat(took).isCloseTo(plank, within(1e-9 * plank));
    }

    /** Newton's law of cooling: T = T_s + (T_0 − T_s) exp(−t K A/C). */
    @Test
    void coolsExponentially() {
      FreezingCourse course =
          freezing.course(vial, Track.constant(263.15), 293.15, 250, every(60, 20));
      double rate = 30 * vial.area() / vial.liquidHeat();
      for (FreezingMoment moment : course.moments()) {
        double expected = 263.15 + 30 * Math.exp(-rate * moment.time());
        assertThat(moment.bottom()).isCloseTo(expected, within(1e-10));
        assertThat(moment.stage()).isEqualTo(FreezingMoment.Stage.LIQUID);
      }
      assertThat(course.nucleationTime()).isEmpty();
      assertThat(course.frozenTime()).isEmpty();
    }

    /** Heat into the shelf is what the stages give off: K A ∫ (T_b − T_shelf) dt. */
    @Test
    void givesOffWhatItStores() {
      Track shelf =
          Track.through(
              List.of(
                  new Track.Point(0, 293.15),
                  new Track.Point(3600, 233.15),
                  new Track.Point(7200, 233.15)));
      FreezingCourse course = freezing.course(vial, shelf, 293.15, 262, every(0.5, 40_000));
      double drawn = 0;
      List<FreezingMoment> moments = course.moments();
      for (int i = 1; i < moments.size(); i++) {
        FreezingMoment a = moments.get(i - 1);
        FreezingMoment b = moments.get(i);
        double mean = (a.bottom() - a.shelf() + b.bottom() - b.shelf()) / 2;
        drawn += 30 * vial.area() * mean * (b.time() - a.time());
      }
      double frozen = course.frozenTime().orElseThrow();
      FreezingMoment through = at(moments, frozen);
      double liquid = vial.liquidHeat() * (293.15 - 272.65);
      double cooling = vial.frozenHeat() * ((272.65 + through.bottom()) / 2 - mean(course.last()));
      double stored = liquid + vial.latentHeat() + cooling;
      assertThat(drawn).isCloseTo(stored, within(2e-3 * stored));
    }

    private static FreezingMoment at(List<FreezingMoment> moments, double time) {
      return moments.stream()
          .filter(moment -> moment.time() <= time)
          .reduce((first, second) -> second)
          .orElseThrow();
    }

    private static double mean(FreezingMoment moment) {
      return moment.bottom() + (moment.top() - moment.bottom()) * 2 / 3;
    }

    @Test
    void jumpsToItsFreezingPointWhenIceAppears() {
      FreezingCourse course =
          freezing.course(vial, Track.constant(243.15), 293.15, 261.15, every(1, 4000));
      double start = course.nucleationTime().orElseThrow();
      FreezingMoment before = course.moments().get((int) Math.floor(start));
      FreezingMoment after = course.moments().get((int) Math.ceil(start));
      assertThat(before.top()).isCloseTo(261.15, within(0.05));
      assertThat(after.top()).isEqualTo(272.65);
      double atOnce = vial.liquidHeat() * (272.65 - 261.15) / vial.latentHeat();
      assertThat(after.frozenShare()).isCloseTo(atOnce, within(0.01));
      assertThat(atOnce).isBetween(0.1, 0.2);
    }

    /** Colder nucleation frees heat at once, so the front has less left to do. */
    @Property(tries = 50)
    void losesNoIce(@ForAll @DoubleRange(min = 250, max = 272) double nucleation) {
      FreezingCourse course =
          freezing.course(vial, Track.constant(233.15), 293.15, nucleation, every(30, 400));
      double last = 0;
      for (FreezingMoment moment : course.moments()) {
        assertThat(moment.frozenShare()).isBetween(last - 1e-12, 1.0);
        assertThat(moment.bottom()).isBetween(moment.shelf() - 1e-9, 293.2);
        assertThat(moment.top()).isGreaterThanOrEqualTo(moment.bottom() - 1e-9);
        last = moment.frozenShare();
      }
      assertThat(course.last().stage()).isEqualTo(FreezingMoment.Stage.FROZEN);
      assertThat(course.last().bottom()).isCloseTo(233.15, within(0.5));
    }

    @Test
    void doesNotDependOnTheTimesAskedFor() {
      Track shelf =
          Track.through(List.of(new Track.Point(0, 293.15), new Track.Point(3000, 233.15)));
      FreezingCourse few = freezing.course(vial, shelf, 293.15, 262, List.of(9000.0));
      FreezingCourse many = freezing.course(vial, shelf, 293.15, 262, every(10, 900));
      assertThat(many.last().bottom()).isCloseTo(few.last().bottom(), within(1e-8));
      assertThat(many.frozenTime().orElseThrow())
          .isCloseTo(few.frozenTime().orElseThrow(), within(1e-6));
    }

    /** Water supercooled by more than 80 K would freeze in one stroke. */
    @Test
    void mayFreezeAtOnce() {
      var shallow = new FreezingVessel(100, 50, 500, 0.001, 4e-4, 30, 2.3, 272);
      FreezingCourse course =
          freezing.course(shallow, Track.constant(240), 290, 260, every(100, 300));
      assertThat(course.frozenTime().orElseThrow())
          .isEqualTo(course.nucleationTime().orElseThrow());
      assertThat(course.last().bottom()).isCloseTo(240.0, within(1.0));
    }

    @Test
    void refusesWhatItDoesNotFollow() {
      Track thawing =
          Track.through(
              List.of(
                  new Track.Point(0, 233.15),
                  new Track.Point(9000, 233.15),
                  new Track.Point(12_000, 300)));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> freezing.course(vial, thawing, 293.15, 262, List.of(30_000.0)));
      Track cold = Track.constant(233.15);
      assertThatIllegalArgumentException()
          .isThrownBy(() -> freezing.course(vial, cold, 293.15, 280, List.of(1.0)));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> freezing.course(vial, cold, 260, 262, List.of(1.0)));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> freezing.course(vial, cold, 293.15, 262, List.of()));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> freezing.course(vial, cold, 293.15, 262, List.of(2.0, 1.0)));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new FreezingVessel(0, 1, 1, 1, 1, 1, 1, 1));
    }
  }

  @Nested
  class NucleationByChance {

    /** Mean and spread of 4000 draws: four standard errors, with one fixed seed. */
    @Test
    void hasTheSpreadAskedFor() {
      List<Double> drawn = NucleationSpread.UNCONTROLLED.draw(4000, ZERO_CELSIUS, 20);
      double mean = drawn.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
      double variance =
          drawn.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum() / 3999;
      assertThat(mean).isCloseTo(261.15, within(4 * 2.5 / Math.sqrt(4000)));
      assertThat(Math.sqrt(variance)).isCloseTo(2.5, within(4 * 2.5 / Math.sqrt(8000)));
    }

    @Test
    void isTheSameForTheSameSeed() {
      assertThat(NucleationSpread.UNCONTROLLED.draw(50, ZERO_CELSIUS, 7))
          .isEqualTo(NucleationSpread.UNCONTROLLED.draw(50, ZERO_CELSIUS, 7))
          .isNotEqualTo(NucleationSpread.UNCONTROLLED.draw(50, ZERO_CELSIUS, 8));
    }

    @Test
    void makesNoIceAboveTheFreezingPoint() {
      assertThat(new NucleationSpread(272, 5).draw(500, 272.65, 3))
          .allSatisfy(value -> assertThat(value).isLessThanOrEqualTo(272.65));
    }

    /** Searles, Carpenter and Randolph (2001): about 3 % shorter for each kelvin warmer. */
    @Test
    void shortensDryingWhenWarm() {
      NucleationSpread spread = NucleationSpread.UNCONTROLLED;
      assertThat(spread.dryingTimeFactor(262.15)).isCloseTo(0.97, within(0.001));
      assertThat(spread.dryingTimeFactor(261.15)).isEqualTo(1);
      assertThatIllegalArgumentException().isThrownBy(() -> new NucleationSpread(261, -1));
    }
  }
}
