package org.firnline.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Both sides of a question must have found the same, as exactly as the question says. */
class SameAnswersTest {

  @Nested
  class VialsThatStoreHeat {

    @Test
    void endAtTheSameTime() {
      for (MarchInTime.Vial vial : RampedVials.all()) {
        double time = new MarchInTime(vial, StoredHeat.TOLERANCE).dryingTime();
        assertThat(StoredHeat.ours(vial)).isCloseTo(time, within(1e-7 * time));
      }
    }
  }

  @Nested
  class WholeCycles {

    @Test
    void endTheirIceAtTheSameTime() {
      for (MarchInTime.Vial vial : RampedVials.all()) {
        double exact = new MarchInTime(vial, StoredHeat.TOLERANCE).dryingTime();
        double baseline = new MarchInTime(vial, WholeCycle.TOLERANCE).dryingTime();
        assertThat(WholeCycle.endOfIce(vial, false)).isCloseTo(exact, within(1e-4 * exact));
        assertThat(baseline).isCloseTo(exact, within(1e-4 * exact));
      }
    }

    @Test
    void allEndTheirIceBeforeTheyEnd() {
      assertThat(RampedVials.all()).allMatch(vial -> WholeCycle.endOfIce(vial, true) < 54 * 3_600);
    }
  }

  @Nested
  class OverloadedDryers {

    @Test
    void runDryAtTheSameTime() {
      for (OverloadedDryer.Overload overload : OverloadedDryer.overloads()) {
        double time = new FloatingMarch(overload, OverloadedDryer.TOLERANCE).dryingTime();
        assertThat(OverloadedDryer.ours(overload)).isCloseTo(time, within(1e-6 * time));
      }
    }
  }
}
