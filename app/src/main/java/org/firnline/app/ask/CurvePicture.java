package org.firnline.app.ask;

import org.firnline.app.words.Quantities;
import org.firnline.evidence.Band;
import org.firnline.planning.ask.WarmUpTime;
import org.firnline.units.QuantityKind;

/** The product as it warms towards its critical temperature. */
final class CurvePicture {
  private static final double LEFT = 66;
  private static final double RIGHT = 348;
  private static final double TOP = 24;
  private static final double BOTTOM = 150;
  private static final int POINTS = 40;
  private static final double WHOLE_HOUR_S = 3_600;

  private CurvePicture() {}

  /** Temperature over time at the best values; the band of moments when it becomes critical. */
  static AskPicture warming(WarmUpTime warming, Band time) {
    return words -> {
      Drawing drawing = new Drawing(190, words.say("ask.failure.picture"));
      double end = end(time);
      double low = Math.min(warming.start(), warming.critical()) - 1;
      double high = Math.max(warming.critical(), warming.temperature_K(end)) + 1;
      if (time.low() > 0 && Double.isFinite(time.low())) {
        double from = across(time.low() / end);
        double to = across(Double.isFinite(time.high()) ? time.high() / end : 1);
        drawing.box("band", from, TOP, Math.min(RIGHT, to) - from, BOTTOM - TOP);
      }
      double limit = up(warming.critical(), low, high);
      drawing.line("limit", LEFT, limit, RIGHT, limit);
      drawing.text("tick", LEFT - 6, limit + 5, "end", celsius(warming.critical()));
      double start = up(warming.start(), low, high);
      if (Math.abs(start - limit) > 16) {
        drawing.text("tick", LEFT - 6, start + 5, "end", celsius(warming.start()));
      }
      drawing.path("curve", curve(warming, end, low, high));
      drawing.line("axis", LEFT, BOTTOM, RIGHT, BOTTOM).line("axis", LEFT, TOP, LEFT, BOTTOM);
      drawing.text("tick", LEFT, BOTTOM + 20, "start", "0");
      drawing.text("tick", RIGHT, BOTTOM + 20, "end", Quantities.words(end, QuantityKind.TIME));
      drawing.text("label", LEFT, 14, "start", words.say("ask.picture.critical"));
      return drawing.svg();
    };
  }

  private static double end(Band time) {
    if (Double.isFinite(time.high()) && time.high() > 0) {
      return time.high() * 1.15;
    }
    boolean some = Double.isFinite(time.low()) && time.low() > 0;
    return some ? time.low() * 4 : WHOLE_HOUR_S;
  }

  private static String curve(WarmUpTime warming, double end, double low, double high) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i <= POINTS; i++) {
      double share = (double) i / POINTS;
      path.append(i == 0 ? "M" : " L")
          .append(Drawing.number(across(share)))
          .append(' ')
          .append(Drawing.number(up(warming.temperature_K(share * end), low, high)));
    }
    return path.toString();
  }

  private static double across(double share) {
    return LEFT + (RIGHT - LEFT) * share;
  }

  private static double up(double kelvin, double low, double high) {
    return BOTTOM - (BOTTOM - TOP) * (kelvin - low) / (high - low);
  }

  private static String celsius(double kelvin) {
    return Quantities.words(kelvin, QuantityKind.TEMPERATURE);
  }
}
