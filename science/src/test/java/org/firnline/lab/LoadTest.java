package org.firnline.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LoadTest {

  private final LoadItem vials = new LoadItem(Examples.PRODUCT, Examples.VIAL, 3e-6, 100, 0.3);
  private final LoadItem trays = new LoadItem(Examples.PRODUCT, Examples.TRAY, 1e-3, 2, 0);

  @Test
  void addsUpItsPortions() {
    var load =
        new Load(
            List.of(
                new Portion(vials, "Ada", List.of(new Hazard.Biological(2))),
                new Portion(trays, "Ben", List.of(new Hazard.Biological(2), new Hazard.Toxic()))));
    assertThat(load.count()).isEqualTo(102);
    assertThat(load.totalIce()).isCloseTo(vials.totalIce() + trays.totalIce(), within(1e-15));
    assertThat(load.hazards()).containsExactly(new Hazard.Biological(2), new Hazard.Toxic());
    assertThat(load.mixesFoodWithOthers()).isFalse();
  }

  @Test
  void noticesFoodAmongOthers() {
    var food = new Portion(trays, "Ben", List.of(new Hazard.Food()));
    var other = new Portion(vials, "Ada", List.of(new Hazard.Azide()));
    assertThat(new Load(List.of(food, other)).mixesFoodWithOthers()).isTrue();
    assertThat(new Load(List.of(food)).mixesFoodWithOthers()).isFalse();
    assertThat(Load.of(vials, "Ada").mixesFoodWithOthers()).isFalse();
  }

  @Test
  void namesEveryHazardForPrograms() {
    List<Hazard> all =
        List.of(
            new Hazard.Solvent("ethanol", 0.3),
            new Hazard.Corrosive("trifluoroacetic acid"),
            new Hazard.Azide(),
            new Hazard.Energetic("perchlorate"),
            new Hazard.Biological(1),
            new Hazard.Toxic(),
            new Hazard.Food());
    assertThat(all)
        .extracting(Hazard::code)
        .containsExactly("solvent", "acid", "azide", "energetic", "biological", "toxic", "food");
  }
}
