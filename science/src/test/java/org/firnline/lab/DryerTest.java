package org.firnline.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.OptionalDouble;
import org.firnline.evidence.Problem;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class DryerTest {

  @Nested
  class WithShelves {

    @Test
    void tellsItsSettings() {
      assertThat(Examples.DRYER.shelfTemperature()).isEqualTo(new Range(230, 310));
      assertThat(Examples.DRYER.shelfRamp()).isEqualTo(0.01);
      assertThat(Examples.DRYER.pressure()).isEqualTo(new Range(4, 60));
    }

    @Test
    void keepsThemWhenItsChamberBecomesKnown() {
      Gauge wire = Gauge.ThermalConductivity.unlearned("wire");
      Dryer known = Examples.DRYER.with(Chamber.of(0.15, 0.01), List.of(wire));
      assertThat(known.shelves()).isEqualTo(Examples.DRYER.shelves());
      assertThat(known.chamber().volume()).hasValue(0.15);
      assertThat(known.gauges()).containsExactly(wire);
    }
  }

  @Nested
  class InRoomAir {

    private final Dryer manifold = Dryer.inRoomAir("manifold", Examples.DUCT, Examples.COLLECTOR);

    @Test
    void hasNeitherShelvesNorPressureControl() {
      assertThat(manifold.shelves()).isEmpty();
      assertThat(manifold.pressureControl()).isEmpty();
      assertThatIllegalStateException().isThrownBy(manifold::shelfTemperature);
      assertThatIllegalStateException().isThrownBy(manifold::shelfRamp);
      assertThatIllegalStateException().isThrownBy(manifold::pressure);
    }
  }

  @Nested
  class AskedToRunARecipe {

    private static Recipe recipe(double shelf, double ramp, double pressure) {
      return new Recipe(
          "r",
          293,
          List.of(
              new RecipeStep(RecipePhase.FREEZING, 233, 0.01, OptionalDouble.empty(), 7200),
              new RecipeStep(
                  RecipePhase.PRIMARY_DRYING, shelf, ramp, OptionalDouble.of(pressure), 36_000)));
    }

    @Test
    void acceptsWhatLiesInItsRanges() {
      assertThat(recipe(253, 0.01, 10).refusedBy(Examples.DRYER)).isEmpty();
    }

    @Test
    void namesEveryStepThatLiesOutside() {
      assertThat(recipe(320, 0.02, 2).refusedBy(Examples.DRYER))
          .extracting(Problem::code, Problem::where)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple("shelf-range", "step 2"),
              org.assertj.core.groups.Tuple.tuple("ramp-range", "step 2"),
              org.assertj.core.groups.Tuple.tuple("pressure-range", "step 2"));
    }

    @Test
    void refusesAnyWithoutShelves() {
      var manifold = Dryer.inRoomAir("manifold", Examples.DUCT, Examples.COLLECTOR);
      assertThat(recipe(253, 0.01, 10).refusedBy(manifold))
          .extracting(Problem::code)
          .containsExactly("no-shelves");
    }

    /** 60 K at 0.01 K/s, 2 h, 20 K at 0.01 K/s, 10 h: 6000 + 7200 + 2000 + 36000 s. */
    @Test
    void knowsHowLongItTakes() {
      assertThat(recipe(253, 0.01, 10).duration()).isEqualTo(51_200);
    }
  }
}
