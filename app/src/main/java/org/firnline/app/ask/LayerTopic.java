package org.firnline.app.ask;

import java.util.ArrayList;
import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.lab.Solution;
import org.firnline.planning.Verdict;
import org.firnline.planning.ask.FlaskLayers;
import org.firnline.planning.ask.IceLayer;
import org.firnline.planning.ask.TrayLevel;
import org.firnline.units.QuantityKind;

/** How thick the layer is and how large its area: shell against puddle, vial, tray. */
final class LayerTopic implements AskTopic {
  private static final double DENSITY = 1_020;
  private static final String FLASK = "flask";

  @Override
  public String key() {
    return "layer";
  }

  @Override
  public List<AskInput> inputs() {
    return List.of(
        AskInput.choice("vessel", FLASK, List.of(FLASK, AskVessel.VIAL, AskVessel.TRAY)),
        AskVessel.FLASK_VOLUME,
        AskVessel.VIAL_SIZE,
        AskVessel.TRAY_AREA,
        AskVessel.FILL,
        AskInput.quantity("solids", QuantityKind.FRACTION, "%", "5 %"),
        AskInput.quantity("wall", QuantityKind.FRACTION, "%", "67 %").only(FLASK),
        AskInput.quantity("length", QuantityKind.LENGTH, "mm", "300 mm").only(AskVessel.TRAY),
        AskInput.quantity("tilt", QuantityKind.LENGTH, "mm", "0 mm").only(AskVessel.TRAY));
  }

  @Override
  public AskAnswer answer(AskValues values) {
    AskVessel vessel = new AskVessel(values, Solution.typical(DENSITY, values.number("solids")));
    return switch (values.text("vessel")) {
      case FLASK -> flask(vessel.flask(values.number("wall")));
      case AskVessel.TRAY -> tray(vessel.layer(), values);
      default -> flat(vessel.layer());
    };
  }

  private static AskAnswer flask(FlaskLayers layers) {
    IceLayer shell = layers.shell();
    IceLayer puddle = layers.puddle();
    List<AskFigure> figures =
        List.of(
            length("shell_thickness", shell.thickness()),
            area("shell_area", shell.heatArea()),
            length("puddle_depth", puddle.thickness()),
            area("puddle_area", puddle.heatArea()),
            AskFigure.exact("gain", layers.gain(), QuantityKind.NUMBER));
    return new AskAnswer(
        layers.shellVerdict(),
        figures,
        "flask-" + Drawing.style(layers.shellVerdict()),
        List.of(
            millimeters(shell.thickness()),
            millimeters(puddle.thickness()),
            Quantities.words(layers.gain(), QuantityKind.NUMBER)),
        LayerPictures.flask(layers));
  }

  private static AskAnswer flat(IceLayer layer) {
    Verdict verdict = FlaskLayers.verdict(layer.thickness());
    return new AskAnswer(
        verdict,
        List.of(length("depth", layer.thickness()), area("area", layer.heatArea())),
        "flat-" + Drawing.style(verdict),
        List.of(millimeters(layer.thickness())),
        LayerPictures.flat(layer, 0));
  }

  private static AskAnswer tray(IceLayer layer, AskValues values) {
    double tilt = values.number("tilt");
    if (!(tilt > 0)) {
      return flat(layer);
    }
    double length = values.number("length");
    var level = new TrayLevel(length, Math.atan2(tilt, length), layer.thickness());
    Verdict depth = FlaskLayers.verdict(level.deepest());
    Verdict worst = depth.compareTo(level.verdict()) > 0 ? depth : level.verdict();
    List<AskFigure> figures = new ArrayList<>();
    figures.add(length("depth", layer.thickness()));
    figures.add(area("area", layer.heatArea()));
    figures.add(length("deepest", level.deepest()));
    figures.add(AskFigure.exact("tilt_time", level.timeFactor(), QuantityKind.NUMBER));
    return new AskAnswer(
        worst,
        figures,
        "tilt-" + Drawing.style(worst),
        List.of(
            millimeters(level.deepest()),
            millimeters(layer.thickness()),
            Quantities.words(level.timeFactor(), QuantityKind.NUMBER)),
        LayerPictures.flat(layer, tilt));
  }

  private static AskFigure length(String name, double meters) {
    return AskFigure.exact(name, meters, QuantityKind.LENGTH);
  }

  private static AskFigure area(String name, double squareMeters) {
    return AskFigure.exact(name, squareMeters, QuantityKind.AREA);
  }

  private static String millimeters(double meters) {
    return Quantities.words(meters, QuantityKind.LENGTH);
  }
}
