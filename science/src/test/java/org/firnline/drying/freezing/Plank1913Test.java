package org.firnline.drying.freezing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class Plank1913Test {

  /** Fully specified reference case, confirmed there by a marching front. */
  @Test
  void meetsTheReferenceCaseOfAVial() {
    var plank = new Plank1913(917 * 317_000.0, 272.15, 233.15, 30, 2.3);
    double time = plank.oneSided(0.00859);
    assertThat(time).isCloseTo(2253.7656663000744, within(1e-10 * time));
  }

  /** Derived shelf test: 10 mm of aqueous fill at −40 °C freeze in 48.1 min. */
  @Test
  void meetsTheDerivedShelfTest() {
    var plank = new Plank1913(3.168e8, 272.15, 233.15, 30, 2.3);
    assertThat(plank.oneSided(0.010) / 60).isCloseTo(48.1, within(0.05));
  }

  /**
   * Singh &amp; Heldman, Introduction to Food Engineering, sphere of 7 cm in air at −40 °C: 0.72 h
   * (inputs from memory, recomputed as 2603 s).
   */
  @Test
  void meetsThePublishedSphere() {
    var plank = new Plank1913(1_000 * 250e3, 273.15 - 1.25, 233.15, 50, 1.2);
    assertThat(plank.allSides(Plank1913.Shape.SPHERE, 0.07)).isCloseTo(2603, within(0.5));
  }

  /**
   * Earle, Unit Operations in Food Processing, 10 cm of meat between plates at −34 °C: 2.09 h bare,
   * 4.11 h behind 1 mm of cardboard a side (inputs from memory, recomputed).
   */
  @Test
  void meetsThePublishedSlab() {
    double heat = 1_090 * 2.56e5;
    var bare = new Plank1913(heat, 271.15, 239.15, 600, 1.6);
    double withCardboard = 1 / (1 / 600.0 + 0.001 / 0.06);
    var wrapped = new Plank1913(heat, 271.15, 239.15, withCardboard, 1.6);
    assertThat(bare.allSides(Plank1913.Shape.SLAB, 0.1) / 3600).isCloseTo(2.09, within(0.005));
    assertThat(wrapped.allSides(Plank1913.Shape.SLAB, 0.1) / 3600).isCloseTo(4.11, within(0.005));
  }

  /** The same with the whole enthalpy from 10 to −18 °C, 3.23e5 J/kg (found): 2.64 and 5.19 h. */
  @Test
  void meetsThePublishedSlabWithItsSensibleHeat() {
    double heat = 1_090 * 3.23e5;
    var bare = new Plank1913(heat, 271.15, 239.15, 600, 1.6);
    double withCardboard = 1 / (1 / 600.0 + 0.001 / 0.06);
    var wrapped = new Plank1913(heat, 271.15, 239.15, withCardboard, 1.6);
    assertThat(bare.allSides(Plank1913.Shape.SLAB, 0.1) / 3600).isCloseTo(2.64, within(0.006));
    assertThat(wrapped.allSides(Plank1913.Shape.SLAB, 0.1) / 3600).isCloseTo(5.19, within(0.006));
  }

  /** 5 cm steak in air of −30 °C, h 5, k 1.1, 73 % water (inputs found): 12.26 h. */
  @Test
  void meetsTheSteak() {
    var steak = new Plank1913(970 * 0.73 * 333.2e3, 273.15 - 1.75, 243.15, 5, 1.1);
    assertThat(steak.allSides(Plank1913.Shape.SLAB, 0.05) / 3600).isCloseTo(12.26, within(0.006));
  }

  /** A slab cooled from both sides is two halves cooled from one. */
  @Test
  void halvesASlab() {
    var plank = new Plank1913(3e8, 272, 240, 40, 2);
    assertThat(plank.allSides(Plank1913.Shape.SLAB, 0.02))
        .isCloseTo(plank.oneSided(0.01), within(1e-9));
  }

  @Test
  void neverEndsInWarmSurroundings() {
    assertThat(new Plank1913(3e8, 272, 275, 40, 2).oneSided(0.01))
        .isEqualTo(Double.POSITIVE_INFINITY);
  }
}
