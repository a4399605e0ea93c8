package org.firnline.app.ask;

import org.firnline.app.words.Quantities;
import org.firnline.app.words.Words;
import org.firnline.planning.ask.FlaskLayers;
import org.firnline.planning.ask.IceLayer;
import org.firnline.units.QuantityKind;

/** Cross-sections of what is frozen, to scale. */
final class LayerPictures {
  private static final double HEIGHT = 190;
  private static final double RADIUS = 66;
  private static final double MIDDLE = 92;
  private static final double WIDE = 280;

  private LayerPictures() {}

  /** Shell and puddle in the same flask, side by side. */
  static AskPicture flask(FlaskLayers layers) {
    return words -> {
      double scale = RADIUS / layers.radius();
      Drawing drawing = new Drawing(HEIGHT, words.say("ask.layer.picture"));
      double left = Drawing.WIDTH / 4;
      double right = 3 * Drawing.WIDTH / 4;
      drawing.ring("ice-ring", left, MIDDLE, RADIUS, layers.shell().thickness() * scale);
      drawing.circle("glass", left, MIDDLE, RADIUS);
      puddle(drawing, right, layers.puddle().thickness() * scale);
      drawing.circle("glass", right, MIDDLE, RADIUS);
      name(words, drawing, left, "ask.picture.shell", layers.shell());
      name(words, drawing, right, "ask.picture.puddle", layers.puddle());
      return drawing.svg();
    };
  }

  private static void puddle(Drawing drawing, double x, double depth) {
    double half = Math.sqrt(Math.max(0, depth * (2 * RADIUS - depth)));
    double level = MIDDLE + RADIUS - depth;
    String start = Drawing.number(x - half) + " " + Drawing.number(level);
    String end = Drawing.number(x + half) + " " + Drawing.number(level);
    String radius = Drawing.number(RADIUS);
    drawing.path("ice", "M" + start + " A" + radius + " " + radius + " 0 0 0 " + end + " Z");
  }

  private static void name(Words words, Drawing drawing, double x, String key, IceLayer layer) {
    drawing.text("label", x, 16, "middle", words.say(key));
    drawing.text(
        "figure",
        x,
        HEIGHT - 10,
        "middle",
        Quantities.words(layer.thickness(), QuantityKind.LENGTH)
            + " · "
            + Quantities.words(layer.heatArea(), QuantityKind.AREA));
  }

  /** A layer on its base, to scale in both directions; a tilted tray is a wedge. */
  static AskPicture flat(IceLayer layer, double tilt_m) {
    return words -> {
      Drawing drawing = new Drawing(HEIGHT - 20, words.say("ask.layer.picture"));
      double side = Math.sqrt(layer.heatArea());
      double scale = Math.min(WIDE / side, 100 / (layer.thickness() + tilt_m));
      double width = side * scale;
      double left = (Drawing.WIDTH - width) / 2;
      double base = 126;
      double mean = layer.thickness() * scale;
      double half = Math.min(mean, tilt_m * scale / 2);
      drawing.path(
          "ice",
          "M"
              + Drawing.number(left)
              + " "
              + Drawing.number(base)
              + " V"
              + Drawing.number(base - mean + half)
              + " L"
              + Drawing.number(left + width)
              + " "
              + Drawing.number(base - mean - half)
              + " V"
              + Drawing.number(base)
              + " Z");
      drawing.line("glass", left - 1, base, left + width + 1, base);
      drawing.line("glass", left - 1, 16, left - 1, base);
      drawing.line("glass", left + width + 1, 16, left + width + 1, base);
      drawing.text(
          "figure",
          Drawing.WIDTH / 2,
          base + 28,
          "middle",
          Quantities.words(layer.thickness(), QuantityKind.LENGTH)
              + " · "
              + Quantities.words(layer.heatArea(), QuantityKind.AREA));
      return drawing.svg();
    };
  }
}
