package org.firnline.app.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import org.firnline.app.planfile.PlanFileReader;
import org.firnline.app.planfile.PlanInput;
import org.firnline.app.planfile.PlanText;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PlanFormTest {
  private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 25, 14, 2);

  private final Map<String, String> parameters = new HashMap<>(PlanQuestions.EXAMPLE);
  private final Map<String, String> ofDryer = new HashMap<>();

  private PlanForm form() {
    return PlanForm.of(parameters, ofDryer, NOW);
  }

  private PlanInput understood() {
    return new PlanFileReader().read("plan", form().yaml()).input().orElseThrow();
  }

  @Nested
  class ANumberWithoutUnit {
    @Test
    void isMeantInTheUnitOfItsField() {
      parameters.put("recipe.shelf", "−22");
      parameters.put("recipe.pressure", "8");
      parameters.put("vessel.fill", "2,5");
      assertThat(understood().shelf_K().orElseThrow()).isCloseTo(251.15, within(1e-9));
      assertThat(understood().pressure_Pa().orElseThrow()).isCloseTo(8, within(1e-12));
      assertThat(understood().load().fill()).isCloseTo(2.5e-6, within(1e-18));
    }
  }

  @Nested
  class ANumberWithAUnit {
    @Test
    void keepsIt() {
      parameters.put("recipe.shelf", "0 °F");
      parameters.put("recipe.pressure", "0.08 mbar");
      // 0 °F = 255.372 K; 0.08 mbar = 8 Pa
      assertThat(understood().shelf_K().orElseThrow()).isCloseTo(255.3722, within(1e-4));
      assertThat(understood().pressure_Pa().orElseThrow()).isCloseTo(8, within(1e-12));
    }
  }

  @Nested
  class WhatIsKnownOfTheDryer {
    @Test
    void isUsedWhereNothingIsTyped() {
      ofDryer.put("dryer.pressure_range", "4 Pa to 50 Pa");
      ofDryer.put("dryer.name", "Fen 2");
      assertThat(understood().dryer().name()).isEqualTo("Fen 2");
      assertThat(understood().dryer().pressure().low()).isCloseTo(4, within(1e-12));
    }

    @Test
    void givesWayToWhatIsTyped() {
      ofDryer.put("dryer.pressure_range", "4 Pa to 50 Pa");
      parameters.put("dryer.pressure_range", "10 Pa to 20 Pa");
      assertThat(understood().dryer().pressure().low()).isCloseTo(10, within(1e-12));
    }
  }

  @Nested
  class ThePlanFile {
    @Test
    void comesBackAsTheSameAnswers() {
      parameters.put("product.name", "honey: \"heather\" # first");
      parameters.put("product.critical_temperature", "-31 °C +- 2 K");
      parameters.put("plan", "yes");
      PlanForm form = form();
      Map<String, String> flat = PlanText.flatten(form.yaml());
      assertThat(flat).containsEntry("product.name", "honey: \"heather\" # first");
      assertThat(flat).containsEntry("plan", "yes").containsEntry("count", "120");
      assertThat(PlanForm.of(flat, ofDryer, NOW).yaml()).isEqualTo(form.yaml());
    }

    @Test
    void holdsNothingThatIsNoQuestion() {
      parameters.put("_csrf", "token");
      parameters.put("product.evil", "1");
      assertThat(form().yaml()).doesNotContain("csrf", "evil");
    }
  }
}
