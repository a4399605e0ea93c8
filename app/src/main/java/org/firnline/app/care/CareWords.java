package org.firnline.app.care;

import org.firnline.app.words.Quantities;
import org.firnline.app.words.Shown;
import org.firnline.app.words.Words;
import org.firnline.care.CareFigure;
import org.firnline.care.ControlChart;
import org.firnline.care.LikelyCause;
import org.firnline.units.Figures;
import org.firnline.units.QuantityKind;

/** Figures of a dryer's health in words. */
public final class CareWords {
  private final Words words;
  private final Shown shown;

  public CareWords(Words words, Shown shown) {
    this.words = words;
    this.shown = shown;
  }

  /** "pump-down to 100 Pa". */
  public String name(CareFigure figure) {
    return words.say("care.figure." + figure.label());
  }

  /** The value with its unit. */
  public String value(CareFigure figure, double si) {
    return switch (figure) {
      case COLLECTOR_COOLING, PUMP_DOWN -> Shown.duration(si);
      case COLLECTOR_COLDEST -> Quantities.words(si, QuantityKind.TEMPERATURE);
      case ULTIMATE_PRESSURE -> Quantities.words(si, QuantityKind.PRESSURE);
      case SHELF_TRACKING -> words.say("care.unit.kelvin", Figures.significant(si, 2));
      case PUMPING_RATE -> words.say("care.unit.per-hour", Figures.significant(si * 3_600, 3));
      case LEAK_RISE -> words.say("care.unit.rise", Figures.significant(si * 60, 2));
      case GAUGE_AGREEMENT, VAPOR_RATIO -> Figures.decimals(si, 3);
    };
  }

  /** "rose since about 14 Mar 2026, seen 2 Apr: 18 min usually, 24 min now". */
  public String change(ControlChart chart, ControlChart.Change change) {
    String direction = change.upward() ? "care.change.rose" : "care.change.fell";
    double now = chart.averages().get(chart.averages().size() - 1);
    return words.say(
        direction,
        shown.fullMoment(change.since()),
        value(chart.figure(), chart.baseline().mean()),
        value(chart.figure(), now));
  }

  /** The last average, and what is usual. */
  public String standing(ControlChart chart) {
    double now = chart.averages().get(chart.averages().size() - 1);
    return words.say(
        "care.standing",
        value(chart.figure(), now),
        value(chart.figure(), chart.baseline().mean()),
        chart.points().size());
  }

  /** What to look at first. */
  public String cause(LikelyCause cause) {
    return words.say("care.cause." + cause.label());
  }
}
