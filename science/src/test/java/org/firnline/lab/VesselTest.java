package org.firnline.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class VesselTest {

  private static final Vessel.Cases<String> KIND =
      new Vessel.Cases<>() {
        @Override
        public String vial(Vial vial) {
          return "vial";
        }

        @Override
        public String tray(Tray tray) {
          return "tray";
        }

        @Override
        public String flask(Flask flask) {
          return "flask";
        }

        @Override
        public String piece(Piece piece) {
          return "piece";
        }
      };

  @Test
  void isOneOfFourKinds() {
    assertThat(Examples.VIAL.fold(KIND)).isEqualTo("vial");
    assertThat(Examples.TRAY.fold(KIND)).isEqualTo("tray");
    assertThat(Examples.SHELL_FLASK.fold(KIND)).isEqualTo("flask");
    assertThat(Examples.PIECE.fold(KIND)).isEqualTo("piece");
  }

  @Nested
  class LayerThickness {

    /**
     * Case B01: 3 mL with 5 % solids in a 10R vial of the printed inner area freeze 8.589 mm deep.
     */
    @Test
    void isTheDepthInAVial() {
      var solution = new Solution(1019.5, 0.05, 0, new PhaseDensities(917, 1590, 1000), 2.3);
      double depth = Examples.VIAL.frozenThickness(solution.frozenVolume(3e-6));
      double areaAsPrinted = Examples.VIAL.innerArea() / 3.801e-4;
      assertThat(depth * areaAsPrinted).isCloseTo(0.008589174483798324, within(1e-12));
    }

    /**
     * Case B04: 400 mL with 6 % solids and 0.1 unfrozen water freeze 9.117 mm thick on the wall.
     */
    @Test
    void isTheShellOnAFlaskWall() {
      var solution = new Solution(1020, 0.06, 0.1, new PhaseDensities(917, 1590, 1000), 2.3);
      assertThat(Examples.SHELL_FLASK.frozenThickness(solution.frozenVolume(4e-4)))
          .isCloseTo(0.009116673904534321, within(1e-13));
    }

    @Test
    void isVolumePerAreaInATrayAndAPuddle() {
      assertThat(Examples.TRAY.frozenThickness(1.2e-3)).isCloseTo(0.01, within(1e-15));
      assertThat(Examples.flask(new Flask.Form.Puddle(0.02)).frozenThickness(2e-4))
          .isCloseTo(0.01, within(1e-15));
    }

    /** Two fronts meet half way. */
    @Test
    void isHalfOfAPiece() {
      assertThat(Examples.PIECE.frozenThickness(Examples.PIECE.largestFill()))
          .isCloseTo(0.005, within(1e-10));
    }
  }

  @Nested
  class InALoad {

    @Test
    void tellsWhatFits() {
      var load = new LoadItem(Examples.PRODUCT, Examples.TRAY, 1.2e-3, 4, 0);
      assertThat(load.frozenDepth())
          .isCloseTo(Examples.SOLUTION.frozenVolume(1.2e-3) / 0.12, within(1e-12));
      assertThat(load.totalIce()).isCloseTo(4 * Examples.SOLUTION.iceMass(1.2e-3), within(1e-12));
      assertThatIllegalStateException().isThrownBy(load::vial).withMessageContaining("tray");
    }

    @Test
    void staysAVialWhereItWasOne() {
      var load = new LoadItem(Examples.PRODUCT, Examples.VIAL, 3e-6, 4, 0);
      assertThat(load.vial()).isEqualTo(Examples.VIAL);
    }
  }

  /** Mean gap 0.8 mm: 12.22, 15.11 and 18.81 W/(m2 K) at 5, 10 and 20 Pa by kinetic theory. */
  @Test
  void ofMouldedGlassHasTheHeatTransferOfAnUnevenBottom() {
    HeatTransfer heat = Vial.moulded("50 mL", 0.042, 0.003, 0.073, 6.2e-5).heatTransfer();
    assertThat(heat.at(5)).isCloseTo(12.22, within(0.005));
    assertThat(heat.at(10)).isCloseTo(15.11, within(0.005));
    assertThat(heat.at(20)).isCloseTo(18.81, within(0.005));
  }
}
