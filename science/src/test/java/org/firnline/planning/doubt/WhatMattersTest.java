package org.firnline.planning.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.firnline.lab.LoadItem;
import org.firnline.planning.design.DesignExamples;
import org.firnline.planning.forecast.DryingProgram;
import org.firnline.planning.forecast.Sharing;
import org.junit.jupiter.api.Test;

/** Shares of 512 even points in ten dimensions: good to about a twentieth. */
class WhatMattersTest {

  private static final DryingProgram HOLD = DryingProgram.hold(245, 6);

  private static LoadItem vials(double heat, double cake, double critical) {
    return new LoadItem(
        DesignExamples.product("invented extract", 242.15, critical, cake),
        DesignExamples.vial(heat),
        3e-6,
        100,
        0);
  }

  private static double total(List<Share> shares, Share.Cause cause) {
    return shares.stream().filter(s -> s.cause() == cause).findFirst().orElseThrow().total();
  }

  @Test
  void the_only_unknown_causes_everything_and_its_measurement_is_named() {
    WhatMatters matters = WhatMatters.of(DesignExamples.exact(vials(0.2, 0, 0)), HOLD);
    assertThat(total(matters.finish(), Share.Cause.HEAT_TRANSFER)).isBetween(0.95, 1.05);
    assertThat(total(matters.finish(), Share.Cause.CAKE_RESISTANCE)).isZero();
    assertThat(matters.cheapest().orElseThrow().measurement())
        .isEqualTo(Measurement.WEIGHED_ICE_RUN);
    assertThat(matters.cheapest().orElseThrow().timeBand()).isBetween(0.2, 0.3);
  }

  @Test
  void a_vague_critical_temperature_rules_the_margin_and_not_the_finish() {
    WhatMatters matters = WhatMatters.of(DesignExamples.exact(vials(0.05, 0.05, 4)), HOLD);
    assertThat(total(matters.margin(), Share.Cause.CRITICAL_TEMPERATURE)).isGreaterThan(0.9);
    assertThat(total(matters.finish(), Share.Cause.CRITICAL_TEMPERATURE)).isZero();
    assertThat(matters.cheapest().orElseThrow().measurement()).isEqualTo(Measurement.MICROSCOPE);
    assertThat(matters.cheapest().orElseThrow().marginBand()).isLessThan(0.5);
  }

  @Test
  void chance_between_vessels_is_named_as_such() {
    Sharing chance = DesignExamples.sharing(vials(0, 0, 0));
    WhatMatters matters = WhatMatters.of(chance, HOLD);
    assertThat(total(matters.finish(), Share.Cause.VESSELS)).isBetween(0.9, 1.1);
    assertThat(matters.cheapest()).isEmpty();
  }

  @Test
  void every_measurement_says_what_it_settles_and_where_its_figures_come_from() {
    assertThat(Measurement.values())
        .allSatisfy(
            test -> {
              assertThat(test.settles()).isNotNull();
              assertThat(test.source().toString()).contains("from memory");
              assertThat(test.effort_h()).isPositive();
            });
  }
}
