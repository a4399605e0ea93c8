package org.firnline.app.library.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.firnline.app.store.KeptUse;
import org.firnline.units.Figures;

/** Predicted bands, actual times and the recipe's hold, run after run. */
final class HistoryPicture {
  private static final double LEFT = 44;
  private static final double WIDTH = 640;
  private static final double HEIGHT = 180;
  private static final double MARGIN = 10;
  private static final double HOUR_S = 3_600;
  private static final double TICK_S = 10 * HOUR_S;

  private HistoryPicture() {}

  static HistoryView.Picture of(List<KeptUse.Prediction> runs) {
    double most = 0;
    for (KeptUse.Prediction run : runs) {
      most = Math.max(most, Math.max(run.recipe_s(), Math.max(run.high_s(), run.actual_s())));
    }
    double top = Math.ceil(most / TICK_S) * TICK_S;
    StringBuilder bands = new StringBuilder();
    StringBuilder actual = new StringBuilder();
    StringBuilder recipe = new StringBuilder();
    double step = (WIDTH - LEFT - MARGIN) / runs.size();
    for (int i = 0; i < runs.size(); i++) {
      KeptUse.Prediction run = runs.get(i);
      String x = text(LEFT + (i + 0.5) * step);
      bands.append('M').append(x).append(' ').append(text(y(run.low_s(), top)));
      bands.append('V').append(text(y(run.high_s(), top)));
      actual.append('M').append(x).append(' ').append(text(y(run.actual_s(), top))).append("h0");
      String held = text(y(run.recipe_s(), top));
      recipe.append(i == 0 ? "M" + text(LEFT) + ' ' + held : "V" + held);
      recipe.append('H').append(text(LEFT + (i + 1) * step));
    }
    List<HistoryView.Tick> ticks = new ArrayList<>();
    for (double time = 0; time <= top; time += 2 * TICK_S) {
      ticks.add(
          new HistoryView.Tick(
              Math.round(10 * y(time, top)) / 10.0,
              Figures.decimals(time / HOUR_S, 0) + "\u202fh"));
    }
    return new HistoryView.Picture(bands.toString(), actual.toString(), recipe.toString(), ticks);
  }

  private static double y(double time_s, double top_s) {
    return HEIGHT - MARGIN - time_s / top_s * (HEIGHT - 2 * MARGIN);
  }

  private static String text(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
