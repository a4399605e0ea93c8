package org.firnline.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class EvidenceTest {

  private static final Provenance STATED = new Provenance.Stated("plan line 3");

  @Nested
  class AnEstimate {

    @Test
    void isShiftedByItsOwnSpread() {
      Estimate estimate = new Estimate(241, 1.5, STATED);
      assertThat(estimate.shifted(-2)).isEqualTo(238);
      assertThat(estimate.withBest(250)).isEqualTo(new Estimate(250, 1.5, STATED));
      assertThat(Estimate.exact(3, STATED).shifted(5)).isEqualTo(3);
    }

    @Test
    void hasFiniteNumbersAndNoNegativeSpread() {
      for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(bad, 0, STATED));
        assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(1, bad, STATED));
      }
      assertThatIllegalArgumentException().isThrownBy(() -> new Estimate(1, -0.1, STATED));
    }
  }

  @Nested
  class ABand {

    @Test
    void isInOrder() {
      assertThat(new Band(1, 2, 5).halfWidth()).isEqualTo(2);
      assertThat(new Band(1, 2, Double.POSITIVE_INFINITY).high()).isInfinite();
      assertThatIllegalArgumentException().isThrownBy(() -> new Band(3, 2, 5));
      assertThatIllegalArgumentException().isThrownBy(() -> new Band(1, 6, 5));
      assertThatIllegalArgumentException().isThrownBy(() -> new Band(Double.NaN, 2, 5));
    }
  }

  @Nested
  class AnOrigin {

    @Test
    void saysInOnePhraseWhereAValueComesFrom() {
      var memory = new Source("Pikal (1985)", Source.Status.FROM_MEMORY);
      assertThat(new Provenance.Published(memory).label())
          .isEqualTo("published: Pikal (1985) (from memory)");
      assertThat(new Provenance.Measured("run 12").label()).isEqualTo("measured here: run 12");
      assertThat(new Provenance.Assumed("cautious").label()).isEqualTo("assumed: cautious");
      assertThat(STATED.label()).isEqualTo("stated: plan line 3");
    }

    @Test
    void isNeverBlank() {
      assertThatIllegalArgumentException().isThrownBy(() -> new Source(" ", Source.Status.FOUND));
    }
  }

  @Nested
  class ARefusal {

    private final Problem fill = new Problem("fill", "fill 12 mL", "load", "too much", "use 6 mL");
    private final Problem count = new Problem("count", "count 0", "load", "too few", "give one");

    @Test
    void carriesEveryProblemInOrder() {
      var refusal = new InvalidInputException(List.of(fill, count));
      assertThat(refusal.problems()).containsExactly(fill, count);
      assertThat(refusal)
          .hasMessage("load: fill 12 mL: too much; use 6 mL; load: count 0: too few; give one");
    }

    @Test
    void canBeMovedToTheLineOfAFile() {
      assertThat(fill.at("plan.yaml line 14").sentence())
          .isEqualTo("plan.yaml line 14: fill 12 mL: too much; use 6 mL");
    }
  }
}
