package org.firnline.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExplanationTest {

  @Test
  void isCompleteForEveryQuantity() {
    assertThat(Explanation.all())
        .hasSizeGreaterThan(100)
        .allSatisfy(
            one -> {
              assertThat(one.meaning()).isNotBlank();
              assertThat(one.formula()).isNotBlank();
              assertThat(one.unit()).isNotBlank();
              assertThat(one.range()).isNotBlank();
            });
  }

  @Test
  void standsOnce() {
    assertThat(Explanation.all()).extracting(Explanation::quantity).doesNotHaveDuplicates();
  }

  @Test
  void isFoundWhateverTheCase() {
    assertThat(Explanation.find(" Max_Bottom_k "))
        .get()
        .extracting(Explanation::unit)
        .isEqualTo("K");
    assertThat(Explanation.find("luck")).isEmpty();
  }
}
