package org.firnline.app.ask;

import java.util.Locale;
import org.firnline.units.Figures;

/** A small SVG drawing: shapes with class names for the stylesheet, texts escaped. */
final class Drawing {
  /** Width of every drawing; narrow, so that its letters stay readable on a phone. */
  static final double WIDTH = 360;

  private final StringBuilder shapes = new StringBuilder();
  private final double height;
  private final String name;

  Drawing(double height, String name) {
    this.height = height;
    this.name = name;
  }

  Drawing line(String style, double x1, double y1, double x2, double y2) {
    return add("line", style, "x1", x1, "y1", y1, "x2", x2, "y2", y2);
  }

  Drawing box(String style, double x, double y, double width, double tall) {
    return add("rect", style, "x", x, "y", y, "width", Math.max(0, width), "height", tall);
  }

  Drawing circle(String style, double x, double y, double radius) {
    return add("circle", style, "cx", x, "cy", y, "r", radius);
  }

  /** A ring whose outer edge has {@code radius}. */
  Drawing ring(String style, double x, double y, double radius, double thickness) {
    return add(
        "circle",
        style,
        "cx",
        x,
        "cy",
        y,
        "r",
        radius - thickness / 2,
        "stroke-width",
        Math.max(1, thickness));
  }

  /** A path by its commands. */
  Drawing path(String style, String commands) {
    shapes.append("<path class=\"").append(style).append("\" d=\"").append(commands).append("\"/>");
    return this;
  }

  /** A text; {@code anchor} is start, middle or end. */
  Drawing text(String style, double x, double y, String anchor, String text) {
    shapes
        .append("<text class=\"")
        .append(style)
        .append("\" x=\"")
        .append(number(x))
        .append("\" y=\"")
        .append(number(y))
        .append("\" text-anchor=\"")
        .append(anchor)
        .append("\">")
        .append(escaped(text))
        .append("</text>");
    return this;
  }

  /** The markup. */
  String svg() {
    return "<svg class=\"ask-picture\" role=\"img\" viewBox=\"0 0 "
        + number(WIDTH)
        + " "
        + number(height)
        + "\" xmlns=\"http://www.w3.org/2000/svg\"><title>"
        + escaped(name)
        + "</title>"
        + shapes
        + "</svg>";
  }

  static String number(double value) {
    return Figures.decimals(value, 1).replace('−', '-');
  }

  private Drawing add(String shape, String style, Object... attributes) {
    shapes.append('<').append(shape).append(" class=\"").append(style).append('"');
    for (int i = 0; i < attributes.length; i += 2) {
      double value = (Double) attributes[i + 1];
      shapes.append(' ').append(attributes[i]).append("=\"").append(number(value)).append('"');
    }
    shapes.append("/>");
    return this;
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .strip();
  }

  /** Lower case for class names. */
  static String style(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
