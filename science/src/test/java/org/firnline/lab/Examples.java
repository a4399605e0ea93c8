package org.firnline.lab;

import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;

/** Plausible nouns for the tests of this package. */
final class Examples {

  static final Provenance STATED = new Provenance.Stated("test");
  static final Estimate FACTOR = new Estimate(1, 0.1, STATED);
  static final Solution SOLUTION = Solution.typical(1020, 0.05);
  static final Product PRODUCT =
      new Product(
          "sucrose",
          SOLUTION,
          new CakeResistance(4.8e4, 4.8e7, 0),
          FACTOR,
          new CriticalTemperature(CriticalTemperature.Kind.COLLAPSE, new Estimate(242, 1, STATED)));
  static final Vial VIAL = Iso8362Vial.R10.nominal();
  static final HeatFromAbove ABOVE = new HeatFromAbove(new Estimate(5, 1, STATED), 0.04);
  static final Tray TRAY =
      new Tray("tray", 0.4, 0.3, 0.025, Vial.UNEVEN_BOTTOM, FACTOR, Optional.of(ABOVE));
  static final Flask SHELL_FLASK = flask(new Flask.Form.Shell(0.055, 0.15));
  static final Piece PIECE = new Piece("slice", 0.01, 0.002, ABOVE);
  static final Capability DUCT = new Capability.Duct(0.005, 0.8, 293);
  static final Collector COLLECTOR = new Collector(4, 2e-5, 218);
  static final Dryer DRYER =
      new Dryer("bench", new Range(230, 310), new Range(4, 60), 0.01, DUCT, COLLECTOR);

  private Examples() {}

  static Flask flask(Flask.Form form) {
    return new Flask(
        "flask",
        1.2e-3,
        form,
        0.0025,
        Flask.BOROSILICATE_CONDUCTIVITY,
        Flask.TYPICAL_ROOM_HEAT_TRANSFER,
        new Estimate(1e6, 5e5, STATED));
  }
}
