package org.firnline.planning.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.firnline.lab.Flask;
import org.firnline.lab.Hazard;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Portion;
import org.firnline.planning.Verdict;
import org.firnline.planning.caution.Caution.Topic;
import org.firnline.planning.design.DesignExamples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CautionListTest {

  private static final LoadItem VIALS = DesignExamples.vials(10);

  private static List<Caution> lines(double duration, Portion... portions) {
    return new CautionList(new Load(List.of(portions)), DesignExamples.dryer(), 10, duration)
        .lines();
  }

  private static Portion portion(String owner, LoadItem item, Hazard... hazards) {
    return new Portion(item, owner, List.of(hazards));
  }

  static Stream<Arguments> declared() {
    return Stream.of(
        Arguments.of(
            new Hazard.Solvent("pyridine", 0.3), Topic.SOLVENT_PARTLY, Verdict.WATCH, "H5"),
        Arguments.of(new Hazard.Solvent("acetone", 0.1), Topic.SOLVENT_PASSES, Verdict.STOP, "H5"),
        Arguments.of(
            new Hazard.Solvent("dimethyl sulfoxide", 0.1),
            Topic.SOLVENT_TRAPPED,
            Verdict.WATCH,
            "H5"),
        Arguments.of(
            new Hazard.Solvent("unheard of", 0.1), Topic.SOLVENT_UNKNOWN, Verdict.STOP, "H5"),
        Arguments.of(new Hazard.Corrosive("TFA"), Topic.CORROSIVE, Verdict.WATCH, "H6"),
        Arguments.of(new Hazard.Azide(), Topic.AZIDE, Verdict.STOP, "H7"),
        Arguments.of(new Hazard.Energetic("nitrate"), Topic.ENERGETIC, Verdict.STOP, "H8"),
        Arguments.of(new Hazard.Biological(2), Topic.BIOLOGICAL, Verdict.WATCH, "H9"),
        Arguments.of(new Hazard.Biological(3), Topic.BIOLOGICAL, Verdict.STOP, "H9"),
        Arguments.of(new Hazard.Toxic(), Topic.TOXIC, Verdict.WATCH, "H10"),
        Arguments.of(new Hazard.Food(), Topic.FOOD, Verdict.WATCH, "H17"));
  }

  @ParameterizedTest
  @MethodSource("declared")
  void a_declared_hazard_has_its_reminder(Hazard hazard, Topic topic, Verdict verdict, String id) {
    Caution line =
        lines(3600, portion("Wren", VIALS, hazard)).stream()
            .filter(c -> c.topic().hazard().equals(id))
            .findFirst()
            .orElseThrow();
    assertThat(line.topic()).isEqualTo(topic);
    assertThat(line.verdict()).isEqualTo(verdict);
    assertThat(line.owner()).isEqualTo("Wren");
    assertThat(line.verdict()).isNotEqualTo(Verdict.PASS);
  }

  @Test
  void nothing_declared_and_a_short_run_leave_only_the_backfill() {
    assertThat(lines(3600, portion("Wren", VIALS)))
        .extracting(Caution::topic)
        .containsExactly(Topic.BACKFILL);
  }

  @Test
  void a_run_longer_than_a_working_day_is_left_alone_at_times() {
    assertThat(lines(30 * 3600, portion("Wren", VIALS)))
        .extracting(Caution::topic)
        .contains(Topic.UNATTENDED);
  }

  @Test
  void a_flask_above_one_liter_is_a_stop_and_a_cold_bath_has_a_reminder() {
    LoadItem flask =
        DesignExamples.of(DesignExamples.flask(new Flask.Form.Shell(0.055, 0.15)), 2e-4, 2);
    assertThat(lines(3600, portion("Wren", flask)))
        .filteredOn(c -> c.topic() == Topic.GLASS)
        .extracting(Caution::verdict)
        .containsExactly(Verdict.STOP);
    assertThat(lines(3600, portion("Wren", flask)))
        .extracting(Caution::topic)
        .contains(Topic.CRYOGEN);
  }

  /** 1 degree over 400 mm is 7.0 mm: more than the layer varies by any other cause. */
  @Test
  void a_tray_says_what_one_degree_does() {
    LoadItem tray = DesignExamples.of(DesignExamples.tray(), 1e-3, 2);
    Caution line = lines(3600, portion("Wren", tray)).get(0);
    assertThat(line.topic()).isEqualTo(Topic.TRAY_LEVEL);
    assertThat(line.figures().get(0).si()).isBetween(0.0069, 0.0071);
    assertThat(line.verdict()).isEqualTo(Verdict.WATCH);
  }

  @Test
  void neighbors_hear_of_food_and_of_solvents() {
    List<Caution> both =
        lines(
            3600,
            portion("Wren", VIALS, new Hazard.Food()),
            portion("Finch", VIALS, new Hazard.Corrosive("acetic acid")));
    assertThat(both.get(0).topic()).isEqualTo(Topic.FOOD_BESIDE_OTHERS);
    assertThat(both).extracting(Caution::topic).contains(Topic.VAPOR_REACHES_OTHERS);
  }

  @Test
  void a_product_that_softens_far_below_freezing_is_named() {
    LoadItem salty =
        new LoadItem(
            DesignExamples.product("brine", 222, 2, 0.2), DesignExamples.vial(0.1), 3e-6, 10, 0);
    assertThat(lines(3600, portion("Wren", salty)))
        .extracting(Caution::topic)
        .contains(Topic.SOFT_PRODUCT);
  }
}
