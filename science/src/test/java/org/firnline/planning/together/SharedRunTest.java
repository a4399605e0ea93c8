package org.firnline.planning.together;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.firnline.lab.Hazard;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Portion;
import org.firnline.planning.design.DesignExamples;
import org.firnline.planning.design.DesignWishes;
import org.firnline.planning.design.Proposal;
import org.firnline.planning.forecast.Sharing;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SharedRunTest {

  private static final DesignWishes WISHES = DesignWishes.USUAL.withMostSteps(1);

  /** Wren's thin layer is frail; Finch's deep one is sturdy and would dry much warmer alone. */
  @Nested
  class AFrailAndADeepItem {

    private final SharedRun run = RUN;

    @Test
    void the_frail_one_rules_the_temperature_and_the_deep_one_the_time() {
      assertThat(run.rulesTemperature()).isZero();
      assertThat(run.rulesTime()).isEqualTo(1);
    }

    @Test
    void the_deep_one_is_held_up_by_the_temperature_of_the_frail_one() {
      assertThat(run.conflicts())
          .anySatisfy(
              conflict -> {
                assertThat(conflict.cause()).isZero();
                assertThat(conflict.sufferer()).isEqualTo(1);
                assertThat(conflict.reason()).isEqualTo(Conflict.Reason.TEMPERATURE);
                assertThat(conflict.cost_s()).isPositive();
              });
    }

    @Test
    void the_frail_one_waits_for_the_deep_one() {
      assertThat(run.items().get(0).waits_s()).isPositive();
      assertThat(run.items().get(1).waits_s()).isZero();
      assertThat(run.conflicts()).extracting(Conflict::reason).contains(Conflict.Reason.TIME);
    }

    @Test
    void both_would_gain_alone() {
      assertThat(run.items())
          .allSatisfy(item -> assertThat(item.gain_s().orElseThrow()).isPositive());
    }

    @Test
    void the_shared_recipe_keeps_the_risk_for_all() {
      assertThat(run.design().of(Proposal.Kind.DESIGNED).orElseThrow().outlook().overheatingRisk())
          .isLessThanOrEqualTo(WISHES.risk());
    }

    @Test
    void declared_food_and_acid_are_conflicts_whatever_the_time() {
      assertThat(run.conflicts())
          .extracting(Conflict::reason)
          .contains(Conflict.Reason.FOOD, Conflict.Reason.SOLVENT_OR_ACID);
    }
  }

  private static final SharedRun RUN = SharedRun.of(sharing(), WISHES);

  private static Sharing sharing() {
    LoadItem frail =
        new LoadItem(
            DesignExamples.product("frail extract", 242.15, 1, 0.15),
            DesignExamples.vial(0.1),
            2e-6,
            40,
            0);
    LoadItem deep =
        new LoadItem(
            DesignExamples.product("sturdy extract", 254.15, 1, 0.15),
            DesignExamples.vial(0.1),
            4e-6,
            40,
            0);
    Load load =
        new Load(
            List.of(
                new Portion(frail, "Wren", List.of(new Hazard.Corrosive("acetic acid"))),
                new Portion(deep, "Finch", List.of(new Hazard.Food()))));
    return new Sharing(load, DesignExamples.dryer());
  }

  @Test
  void a_single_item_shares_with_nobody() {
    Sharing one = DesignExamples.sharing(DesignExamples.vials(10));
    assertThatThrownBy(() -> SharedRun.of(one, WISHES)).hasMessageContaining("two items");
  }
}
