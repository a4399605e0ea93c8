package org.firnline.app.ask;

import java.util.Arrays;
import java.util.List;
import org.firnline.evidence.Estimate;
import org.firnline.lab.Flask;
import org.firnline.lab.HeatTransfer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.Solution;
import org.firnline.lab.Vial;
import org.firnline.planning.ask.FlaskLayers;
import org.firnline.planning.ask.IceLayer;
import org.firnline.units.QuantityKind;

/** The vessel of a question: its inputs, its layer of ice and how heat reaches it. */
final class AskVessel {
  static final String SHELL = "flask-shell";
  static final String PUDDLE = "flask-puddle";
  static final String VIAL = "vial";
  static final String TRAY = "tray";
  static final List<String> KINDS = List.of(SHELL, PUDDLE, VIAL, TRAY);

  static final AskInput FLASK_VOLUME =
      AskInput.quantity("flask", QuantityKind.VOLUME, "mL", "1 L").only("flask", SHELL, PUDDLE);
  static final AskInput VIAL_SIZE =
      AskInput.choice(
              "size", "10R", Arrays.stream(Iso8362Vial.values()).map(Iso8362Vial::size).toList())
          .only(VIAL);
  static final AskInput TRAY_AREA =
      AskInput.quantity("tray", QuantityKind.AREA, "cm2", "600 cm2").only(TRAY);
  static final AskInput FILL =
      AskInput.quantity("fill", QuantityKind.VOLUME, "mL", "200 mL")
          .with(VIAL, "3 mL")
          .with(TRAY, "500 mL");

  /** Water with about 5 % of solids. */
  static final Solution USUAL_SOLUTION = Solution.typical(1_020, 0.05);

  private final AskValues values;
  private final Solution solution;

  AskVessel(AskValues values, Solution solution) {
    this.values = values;
    this.solution = solution;
  }

  double ice() {
    return solution.iceMass(values.number("fill"));
  }

  double frozenVolume() {
    return solution.frozenVolume(values.number("fill"));
  }

  FlaskLayers flask(double wallShare) {
    return new FlaskLayers(frozenVolume(), values.number("flask"), wallShare);
  }

  /** What is frozen, seen by heat and vapor. */
  IceLayer layer() {
    return switch (values.text("vessel")) {
      case SHELL -> flask(FlaskLayers.USUAL_WALL_SHARE).shell();
      case PUDDLE -> flask(FlaskLayers.USUAL_WALL_SHARE).puddle();
      case VIAL -> IceLayer.flat(frozenVolume(), vial().innerArea());
      default -> IceLayer.flat(frozenVolume(), values.number("tray"));
    };
  }

  /** From what warms it to the area of the layer, at a pressure. */
  Estimate heatTransfer(double pressure_Pa) {
    return switch (values.text("vessel")) {
      case SHELL, PUDDLE -> Flask.TYPICAL_ROOM_HEAT_TRANSFER;
      case VIAL ->
          shelf(
              Iso8362Vial.TYPICAL_HEAT_TRANSFER,
              Iso8362Vial.TYPICAL_HEAT_TRANSFER_FACTOR,
              pressure_Pa,
              vial().outerArea() / vial().innerArea());
      default -> shelf(Vial.UNEVEN_BOTTOM, Vial.UNEVEN_BOTTOM_FACTOR, pressure_Pa, 1);
    };
  }

  private static Estimate shelf(
      HeatTransfer transfer, Estimate factor, double pressure_Pa, double areas) {
    double best = transfer.at(pressure_Pa) * areas * factor.best();
    return new Estimate(best, best * factor.spread(), factor.provenance());
  }

  private Vial vial() {
    return Iso8362Vial.find(values.text("size")).orElseThrow().nominal();
  }
}
