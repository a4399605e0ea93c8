package org.firnline.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.firnline.golden.GoldenRow;
import org.firnline.units.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class Iso8362VialTest {

  static Stream<GoldenRow> areas() {
    return GoldenRow.of("vial-areas.csv");
  }

  /** The areas follow from dimensions of ISO 8362-1 that are recalled, not retrieved. */
  @ParameterizedTest
  @MethodSource("areas")
  void hasTheNominalAreas(GoldenRow row) {
    Vial vial = Iso8362Vial.find(row.condition()).orElseThrow().nominal();
    double area = row.quantity().equals("vial_outer_area") ? vial.outerArea() : vial.innerArea();
    assertThat(area).isCloseTo(row.si(QuantityKind.AREA), within(row.allowed(QuantityKind.AREA)));
  }

  @Test
  void isFoundWhateverTheCase() {
    assertThat(Iso8362Vial.find(" 10r ")).contains(Iso8362Vial.R10);
    assertThat(Iso8362Vial.find("12R")).isEmpty();
  }
}
