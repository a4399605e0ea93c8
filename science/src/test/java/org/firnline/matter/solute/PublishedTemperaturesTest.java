package org.firnline.matter.solute;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;
import org.firnline.golden.GoldenRow;
import org.firnline.matter.solute.MaterialTemperature.Category;
import org.firnline.matter.solute.MaterialTemperature.Property;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PublishedTemperaturesTest {

  private static final double ZERO_CELSIUS = 273.15;

  private static Source.Status status(MaterialTemperature value) {
    return ((Provenance.Published) value.temperature().provenance()).source().status();
  }

  @Test
  void areAllPlausibleAndHaveAnOrigin() {
    assertThat(PublishedTemperatures.all())
        .hasSizeGreaterThan(70)
        .allSatisfy(
            value -> {
              assertThat(value.material()).isNotBlank();
              assertThat(value.condition()).isNotBlank();
              assertThat(value.temperature().spread()).isPositive();
              assertThat(value.temperature().best()).isBetween(180.0, 500.0);
              boolean frozen = value.property().limitsPrimaryDrying();
              assertThat(value.temperature().best() < ZERO_CELSIUS).isEqualTo(frozen);
            });
  }

  static Stream<GoldenRow> reference() {
    return GoldenRow.of("solute-temperatures.csv");
  }

  @ParameterizedTest
  @MethodSource("reference")
  void repeatTheReferenceWithItsStatus(GoldenRow row) {
    Property property =
        row.quantity().equals("Tg_dry") ? Property.DRY_GLASS_TRANSITION : Property.GLASS_TRANSITION;
    assertThat(PublishedTemperatures.of(row.condition()))
        .filteredOn(value -> value.property() == property)
        .filteredOn(value -> status(value).label().endsWith(statusWord(row)))
        .extracting(value -> value.temperature().best())
        .anySatisfy(
            kelvin ->
                assertThat(kelvin)
                    .isCloseTo(
                        row.si(QuantityKind.TEMPERATURE),
                        within(row.allowed(QuantityKind.TEMPERATURE))));
  }

  private static String statusWord(GoldenRow row) {
    return row.status().equals("memory") ? "memory" : "source";
  }

  /** DeLuca, Kamat & Koida (1989): sucrose −28 °C, lactose −23 °C, and warmer with tert-butanol. */
  @Test
  void holdTheRetrievedCollapseTemperatures() {
    assertThat(PublishedTemperatures.of("sucrose"))
        .filteredOn(value -> value.property() == Property.COLLAPSE)
        .filteredOn(value -> status(value) == Source.Status.FOUND)
        .extracting(value -> Math.rint(value.temperature().best() - ZERO_CELSIUS))
        .containsExactlyInAnyOrder(-28.0, -21.0, -20.0);
    assertThat(PublishedTemperatures.of("lactose"))
        .filteredOn(
            value -> status(value) == Source.Status.FOUND && value.temperature().best() < 270)
        .extracting(value -> Math.rint(value.temperature().best() - ZERO_CELSIUS))
        .containsExactlyInAnyOrder(-23.0, -22.0, -21.0);
  }

  /** The lowest of what is published, so that a plan errs to the cold side. */
  @Test
  void offerTheCautiousChoice() {
    MaterialTemperature sucrose = PublishedTemperatures.mostCautious("Sucrose").orElseThrow();
    assertThat(sucrose.temperature().best() - ZERO_CELSIUS).isCloseTo(-32, within(1e-9));
    assertThat(sucrose.property()).isEqualTo(Property.GLASS_TRANSITION);
    assertThat(PublishedTemperatures.mostCautious("sodium chloride").orElseThrow().property())
        .isEqualTo(Property.EUTECTIC);
    assertThat(PublishedTemperatures.mostCautious("unobtainium")).isEmpty();
  }

  /** Bellows & King: liquid foods collapse between −5 and −60 °C. */
  @Test
  void keepFoodsInThePublishedBand() {
    assertThat(PublishedTemperatures.all())
        .filteredOn(value -> value.category() == Category.FOOD)
        .filteredOn(value -> value.property() == Property.COLLAPSE)
        .allSatisfy(
            value -> assertThat(value.temperature().best() - ZERO_CELSIUS).isBetween(-60.0, -5.0));
  }

  /** Collapse lies at most a few kelvin from the glass transition of the same solute. */
  @Test
  void agreeAmongEachOther() {
    for (String sugar : new String[] {"sucrose", "trehalose", "maltose", "raffinose", "glucose"}) {
      double glass = only(sugar, Property.GLASS_TRANSITION);
      double collapse = only(sugar, Property.COLLAPSE);
      assertThat(collapse - glass).as(sugar).isBetween(-3.0, 4.0);
    }
  }

  private static double only(String material, Property property) {
    return PublishedTemperatures.of(material).stream()
        .filter(value -> value.property() == property)
        .filter(value -> status(value) == Source.Status.FROM_MEMORY)
        .findFirst()
        .orElseThrow()
        .temperature()
        .best();
  }

  @Test
  void areFoundByPartOfAName() {
    assertThat(PublishedTemperatures.materialsLike("juice"))
        .containsExactly("apple juice", "grape juice", "grape juice, Concord", "orange juice");
    assertThat(PublishedTemperatures.materialsLike("nothing")).isEmpty();
  }

  @Test
  void includeGlassFormersWithBothConstants() {
    assertThat(GlassFormer.all()).extracting(GlassFormer::material).contains("sucrose", "lactose");
    GlassFormer trehalose = GlassFormer.find("Trehalose").orElseThrow();
    assertThat(trehalose.model().at(0) - ZERO_CELSIUS).isCloseTo(106, within(1e-9));
    assertThat(trehalose.cautiousModel().at(0.05)).isLessThan(trehalose.model().at(0.05));
    assertThat(GlassFormer.find("unobtainium")).isEmpty();
  }
}
