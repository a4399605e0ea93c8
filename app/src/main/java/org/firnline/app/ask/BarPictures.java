package org.firnline.app.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Words;
import org.firnline.evidence.Band;
import org.firnline.planning.ask.CollectorFit;
import org.firnline.planning.ask.PressureReach;
import org.firnline.units.QuantityKind;

/** Answers as lengths on a scale. */
final class BarPictures {
  private static final double LEFT = 12;
  private static final double RIGHT = 348;
  private static final double HOUR_S = 3_600;

  private BarPictures() {}

  /** A band of times on an axis of hours. */
  static AskPicture time(Band time) {
    return words -> {
      Drawing drawing = new Drawing(110, words.say("ask.time.picture"));
      double end = Double.isFinite(time.high()) ? time.high() : 2 * time.low();
      if (!Double.isFinite(end) || end <= 0) {
        drawing.text("figure", Drawing.WIDTH / 2, 60, "middle", words.say("ask.never"));
        return drawing.svg();
      }
      double step = niceStep(end / HOUR_S / 4);
      double longest = Math.ceil(end / HOUR_S / step) * step * HOUR_S;
      for (double hours = 0; hours * HOUR_S <= longest * 1.001; hours += step) {
        double x = at(hours * HOUR_S / longest);
        drawing.line("axis", x, 70, x, 76);
        drawing.text(
            "tick",
            x,
            92,
            hours == 0 ? "start" : x > RIGHT - 8 ? "end" : "middle",
            Quantities.words(hours * HOUR_S, QuantityKind.TIME));
      }
      drawing.line("axis", LEFT, 70, RIGHT, 70);
      drawing.box(
          "band", at(time.low() / longest), 32, at(end / longest) - at(time.low() / longest), 28);
      if (Double.isFinite(time.best())) {
        double best = at(time.best() / longest);
        drawing.line("best", best, 26, best, 66);
        drawing.text(
            "figure", clear(best), 18, "middle", Quantities.words(time.best(), QuantityKind.TIME));
      }
      return drawing.svg();
    };
  }

  private static double niceStep(double raw) {
    double[] steps = {0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 72, 120, 240, 480, 960};
    for (double step : steps) {
      if (step >= raw) {
        return step;
      }
    }
    return raw;
  }

  private static double at(double share) {
    return LEFT + (RIGHT - LEFT) * share;
  }

  private static double clear(double x) {
    return Math.min(RIGHT - 30, Math.max(LEFT + 30, x));
  }

  private record Mark(String style, String text, double pascal) {}

  /** Pressures on a logarithmic scale, the greatest on top. */
  static AskPicture pressure(PressureReach reach) {
    return words -> {
      Drawing drawing = new Drawing(250, words.say("ask.pressure.picture"));
      List<Mark> marks = new ArrayList<>();
      marks.add(mark(words, "product", reach.productIce_Pa()));
      marks.add(mark(words, "chamber", reach.pressure()));
      marks.add(mark(words, "collector", reach.floor_Pa()));
      double low = Math.log(marks.stream().mapToDouble(Mark::pascal).min().orElse(1) / 2);
      double high = Math.log(marks.stream().mapToDouble(Mark::pascal).max().orElse(100) * 2);
      double top = up(reach.usualHigh_Pa(), low, high);
      double bottom = Math.min(236, up(reach.usualLow_Pa(), low, high));
      drawing.box("usual", 20, top, 44, bottom - top);
      drawing.line("axis", 42, 14, 42, 236);
      marks.add(new Mark("usual", words.say("ask.picture.usual"), middleOf(reach)));
      marks.sort(Comparator.comparingDouble(Mark::pascal).reversed());
      double free = 20;
      for (Mark mark : marks) {
        double y = up(mark.pascal(), low, high);
        double text = Math.max(free, y + 5);
        if (!mark.style().equals("usual")) {
          drawing.line(mark.style(), 28, y, 56, y);
        }
        drawing.line("hair", 58, y, 84, text - 5);
        drawing.text("label", 90, text, "start", sentence(mark, reach));
        free = text + 24;
      }
      return drawing.svg();
    };
  }

  private static String sentence(Mark mark, PressureReach reach) {
    String figure =
        mark.style().equals("usual")
            ? Quantities.words(reach.usualLow_Pa(), QuantityKind.PRESSURE)
                + " – "
                + Quantities.words(reach.usualHigh_Pa(), QuantityKind.PRESSURE)
            : Quantities.words(mark.pascal(), QuantityKind.PRESSURE);
    return mark.text() + " " + figure;
  }

  private static double middleOf(PressureReach reach) {
    return Math.sqrt(reach.usualLow_Pa() * reach.usualHigh_Pa());
  }

  private static Mark mark(Words words, String style, double pascal) {
    return new Mark(style, words.say("ask.picture." + style), pascal);
  }

  private static double up(double pascal, double low, double high) {
    return 236 - 222 * (Math.log(pascal) - low) / (high - low);
  }

  /** What the load takes of the collector, in amount and in rate. */
  static AskPicture collector(CollectorFit fit) {
    return words -> {
      Drawing drawing = new Drawing(150, words.say("ask.collector.picture"));
      double longest = Math.max(1.15, Math.max(fit.capacityShare(), fit.rateShare()) * 1.05);
      share(drawing, words.say("ask.picture.amount"), fit.capacityShare(), longest, 28);
      share(drawing, words.say("ask.picture.rate"), fit.rateShare(), longest, 88);
      double full = at(1 / longest);
      drawing.line("limit", full, 22, full, 124);
      drawing.text(
          "tick", Math.min(full, RIGHT - 30), 142, "middle", words.say("ask.picture.full"));
      return drawing.svg();
    };
  }

  private static void share(Drawing drawing, String name, double share, double longest, double y) {
    drawing.text("label", LEFT, y - 6, "start", name);
    drawing.box("empty", LEFT, y, at(1 / longest) - LEFT, 26);
    drawing.box(share > 1 ? "too-much" : "filled", LEFT, y, at(share / longest) - LEFT, 26);
    drawing.text("figure", RIGHT, y - 6, "end", Quantities.words(share, QuantityKind.FRACTION));
  }
}
