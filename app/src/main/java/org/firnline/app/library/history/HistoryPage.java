package org.firnline.app.library.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.firnline.app.store.KeptUse;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.learning.pool.TrackRecord;
import org.firnline.units.Figures;
import org.firnline.units.QuantityKind;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Predicted against actual for every run: trust is earned where everyone can see it. */
@Controller
class HistoryPage {
  private static final double HOUR_S = 3_600;

  private final KeptUse use;
  private final Shown shown;

  HistoryPage(KeptUse use, Shown shown) {
    this.use = use;
    this.shown = shown;
  }

  @GetMapping("/library/predictions")
  String predictions(Model model, Locale locale) {
    Words words = Words.in(locale);
    Map<String, List<KeptUse.Prediction>> products = new LinkedHashMap<>();
    for (KeptUse.Prediction one : use.predictions()) {
      products.computeIfAbsent(one.product(), any -> new ArrayList<>()).add(one);
    }
    List<HistoryView.Product> views = new ArrayList<>();
    products.forEach((name, runs) -> views.add(product(name, runs, words)));
    model.addAttribute("history", new HistoryView(views));
    return "library/predictions";
  }

  private HistoryView.Product product(String name, List<KeptUse.Prediction> runs, Words words) {
    TrackRecord record =
        new TrackRecord(
            runs.stream()
                .map(
                    run ->
                        new TrackRecord.Entry(
                            run.title(),
                            run.predicted_s(),
                            run.low_s(),
                            run.high_s(),
                            run.actual_s()))
                .toList());
    List<TrackRecord.Running> running = record.running();
    List<HistoryView.Row> rows = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      rows.add(row(runs.get(i), record.entries().get(i), running.get(i)));
    }
    TrackRecord.Running last = running.get(running.size() - 1);
    double first = runs.get(0).recipe_s();
    double now = runs.get(runs.size() - 1).recipe_s();
    return new HistoryView.Product(
        name,
        words.say(
            now <= first ? "history.shorter" : "history.longer",
            Shown.duration(first),
            Shown.duration(now),
            Quantities.words(Math.abs(now / first - 1), QuantityKind.FRACTION)),
        words.say(
            "history.trust",
            runs.size(),
            Quantities.words(last.typicalError(), QuantityKind.FRACTION),
            Quantities.words(last.coverage(), QuantityKind.FRACTION)),
        HistoryPicture.of(runs),
        rows);
  }

  private HistoryView.Row row(
      KeptUse.Prediction run, TrackRecord.Entry entry, TrackRecord.Running running) {
    return new HistoryView.Row(
        run.title(),
        shown.fullMoment(run.started()),
        shown.durations(run.low_s(), run.high_s()),
        Figures.decimals(run.actual_s() / HOUR_S, 1),
        percent(entry.relativeError()),
        Quantities.words(running.coverage(), QuantityKind.FRACTION));
  }

  private static String percent(double share) {
    return (share > 0 ? "+" : "") + Figures.decimals(100 * share, 1) + "\u202f%";
  }
}
