package org.firnline.app.care;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.firnline.app.store.KeptCare;
import org.firnline.app.store.KeptDryer;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptUse;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.care.CareTask;
import org.firnline.care.ControlChart;
import org.firnline.care.DryerHealth;
import org.firnline.units.Figures;
import org.firnline.units.QuantityKind;
import org.springframework.stereotype.Component;

/** Puts the Care page into words. */
@Component
class CareViews {
  private final KeptDryers dryers;
  private final KeptCare care;
  private final KeptUse use;
  private final FiguresOfRuns runs;
  private final Shown shown;
  private final Clock clock;

  CareViews(
      KeptDryers dryers, KeptCare care, KeptUse use, FiguresOfRuns runs, Shown shown, Clock clock) {
    this.dryers = dryers;
    this.care = care;
    this.use = use;
    this.runs = runs;
    this.shown = shown;
    this.clock = clock;
  }

  CareView page(Locale locale) {
    Words words = Words.in(locale);
    runs.keepNewOnes();
    List<KeptUse.Use> all = use.list();
    return new CareView(
        dryers.list().stream().map(dryer -> dryer(dryer, all, words)).toList(), shares(all, words));
  }

  private CareView.Dryer dryer(KeptDryer dryer, List<KeptUse.Use> all, Words words) {
    CareWords figures = new CareWords(words, shown);
    DryerHealth health = DryerHealth.of(care.points(dryer.id()));
    List<CareView.Trend> trends = health.charts().stream().map(c -> trend(c, figures)).toList();
    List<CareView.Due> due = due(dryer, all, words);
    long worse = trends.stream().filter(CareView.Trend::worse).count();
    long late = due.stream().filter(one -> one.state().equals("watch")).count();
    double hours =
        all.stream()
            .filter(one -> one.dryerId() == dryer.id())
            .mapToDouble(KeptUse.Use::hours)
            .sum();
    return new CareView.Dryer(
        dryer.name(),
        worse + late > 0 ? "watch" : "pass",
        trends.isEmpty()
            ? words.say("care.summary.too-few")
            : words.say("care.summary", worse, trends.size(), late),
        health.causes().stream().map(figures::cause).toList(),
        trends,
        due,
        words.say("care.hours", Figures.decimals(hours, 0)));
  }

  private static CareView.Trend trend(ControlChart chart, CareWords figures) {
    Optional<ControlChart.Change> change = chart.change();
    return new CareView.Trend(
        figures.name(chart.figure()),
        figures.standing(chart),
        change.map(seen -> figures.change(chart, seen)),
        change.map(ControlChart.Change::worse).orElse(false),
        TrendPicture.of(chart));
  }

  private List<CareView.Due> due(KeptDryer dryer, List<KeptUse.Use> all, Words words) {
    Instant now = clock.instant();
    List<CareView.Due> due = new ArrayList<>();
    for (KeptCare.KeptTask kept : care.tasks(dryer.id())) {
      CareTask task = kept.task();
      double hours =
          all.stream()
              .filter(one -> one.dryerId() == dryer.id())
              .filter(one -> task.last().map(one.started()::isAfter).orElse(true))
              .mapToDouble(KeptUse.Use::hours)
              .sum();
      CareTask.Standing standing = task.at(now, hours);
      boolean calls = standing == CareTask.Standing.DUE || standing == CareTask.Standing.UNKNOWN;
      due.add(
          new CareView.Due(
              calls ? "watch" : "pass",
              words.say("care.due." + standing.name().toLowerCase(Locale.ROOT)),
              task.name(),
              when(task, now, hours, words)));
    }
    return due;
  }

  private String when(CareTask task, Instant now, double hours, Words words) {
    return task.last()
        .map(
            last ->
                words.say(
                    "care.due.since",
                    shown.ago(last, now),
                    Figures.decimals(hours, 0),
                    Quantities.words(task.used(now, hours), QuantityKind.FRACTION)))
        .orElseGet(() -> words.say("care.due.never"));
  }

  private static List<CareView.Share> shares(List<KeptUse.Use> all, Words words) {
    Map<String, double[]> groups = new TreeMap<>();
    double whole = 0;
    for (KeptUse.Use one : all) {
      double[] sums = groups.computeIfAbsent(one.group(), any -> new double[2]);
      sums[0]++;
      sums[1] += one.hours();
      whole += one.hours();
    }
    List<CareView.Share> shares = new ArrayList<>();
    for (Map.Entry<String, double[]> group : groups.entrySet()) {
      double hours = group.getValue()[1];
      shares.add(
          new CareView.Share(
              group.getKey(),
              (int) group.getValue()[0],
              words.say("care.hours", Figures.decimals(hours, 0)),
              Quantities.words(whole == 0 ? 0 : hours / whole, QuantityKind.FRACTION)));
    }
    return shares;
  }
}
