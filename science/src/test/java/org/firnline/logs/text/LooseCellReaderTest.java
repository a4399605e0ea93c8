package org.firnline.logs.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers that are not written plainly keep their value. */
class LooseCellReaderTest {
  private final LooseCellReader reader = new LooseCellReader('.', Map.of());

  @ParameterizedTest
  @CsvSource({
    "43076307.33333E-33, 4.307630733333e-26",
    "0.00000012e3 Pa, 1.2e-4",
    "1.2-3, 1.2e-3",
    "12345678.5-9, 1.23456785e-2",
    "8.1 x 10^-2, 8.1e-2"
  })
  void an_exponent_behind_any_mantissa_is_read(String cell, double expected) {
    LooseCell read = reader.read(cell);
    assertThat(read.kind()).isEqualTo(LooseCell.Kind.NUMBER);
    assertThat(read.number()).isEqualTo(expected);
  }
}
