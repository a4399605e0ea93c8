package org.firnline.app.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.firnline.app.store.KeptCare;
import org.firnline.app.store.KeptDryers;
import org.firnline.app.store.KeptUse;
import org.firnline.care.CareFigure;
import org.firnline.care.CarePoint;
import org.firnline.care.CareTask;
import org.springframework.stereotype.Component;

/**
 * Two years of invented figures, one per run, without the logs behind them: a pump on Fen 2 that
 * slowly fails, a gauge on Fen 3 that drifts, and a recipe that became shorter as predictions
 * improved.
 */
@Component
class TwoYears {
  private static final int RUNS = 96;
  private static final int PUMP_BEGINS = 66;
  private static final int GAUGE_BEGINS = 58;
  private static final double HOUR_S = 3_600;
  private static final List<String> GROUPS =
      List.of("Culture collection", "Botany", "Soil biology", "Teaching");
  private static final long SEED = 1_907;

  private final KeptDryers dryers;
  private final KeptCare care;
  private final KeptUse use;

  TwoYears(KeptDryers dryers, KeptCare care, KeptUse use) {
    this.dryers = dryers;
    this.care = care;
    this.use = use;
  }

  /** Fills the two years before {@code now}. */
  void fill(Instant now) {
    Random chance = new Random(SEED);
    Instant start = now.minus(Duration.ofDays(730)).truncatedTo(ChronoUnit.HOURS);
    for (int dryer = 1; dryer <= 3; dryer++) {
      long id = dryers.find("Fen " + dryer).orElseThrow().id();
      for (int run = 0; run < RUNS; run++) {
        Instant at = start.plus(Duration.ofHours(Math.round(730 * 24.0 * run / RUNS)));
        figures(chance, dryer, id, run, at);
        if (run % 4 == dryer) {
          use(chance, dryer, id, run, at);
        }
      }
      tasks(dryer, id, now);
    }
    predictions(dryers.find("Fen 2").orElseThrow().id(), start, chance);
  }

  private void figures(Random chance, int dryer, long id, int run, Instant at) {
    double wear = dryer == 2 ? Math.max(0, run - PUMP_BEGINS) / 30.0 : 0;
    double drift = dryer == 3 ? Math.max(0, run - GAUGE_BEGINS) / 38.0 : 0;
    boolean manifold = dryer == 1;
    double time = manifold ? 380 : dryer == 2 ? 310 * (1 + 0.45 * wear) : 450;
    keep(chance, dryer, id, run, at, CareFigure.PUMP_DOWN, time, 0.03);
    keep(chance, dryer, id, run, at, CareFigure.PUMPING_RATE, 6.5 / time, 0.025);
    double lowest = manifold ? 1.03 : dryer == 2 ? 9.95 : 8.96;
    keep(chance, dryer, id, run, at, CareFigure.ULTIMATE_PRESSURE, lowest, 0.02);
    double coldest = manifold ? 190.6 : 203;
    keep(chance, dryer, id, run, at, CareFigure.COLLECTOR_COLDEST, coldest, 0.001);
    if (!manifold) {
      keep(chance, dryer, id, run, at, CareFigure.COLLECTOR_COOLING, 2_670, 0.02);
      double dry = dryer == 2 ? 1.165 : 1.095 + 0.08 * drift;
      keep(chance, dryer, id, run, at, CareFigure.GAUGE_AGREEMENT, dry, 0.006);
      double wet = dryer == 2 ? 1.58 : 1.47 + 0.09 * drift;
      keep(chance, dryer, id, run, at, CareFigure.VAPOR_RATIO, wet, 0.008);
      keep(chance, dryer, id, run, at, CareFigure.SHELF_TRACKING, 0.099, 0.04);
    }
  }

  private void keep(
      Random chance,
      int dryer,
      long id,
      int run,
      Instant at,
      CareFigure figure,
      double usual,
      double scatter) {
    double value = usual * (1 + scatter * chance.nextGaussian());
    care.keep(id, key(dryer, run), new CarePoint(figure, at, title(dryer, run), value));
  }

  private void use(Random chance, int dryer, long id, int run, Instant at) {
    String group = GROUPS.get(chance.nextInt(GROUPS.size()));
    double hours = 30 + chance.nextInt(40);
    use.set(new KeptUse.Use(key(dryer, run), id, title(dryer, run), group, at, hours));
  }

  private void tasks(int dryer, long id, Instant now) {
    task(id, "Pump oil", now, 120 + 70 * dryer, 182, 1_000);
    task(id, "Leak test, empty and dry", now, 40 + 25 * dryer, 91, 0);
    task(id, "Compare the two gauges", now, 100, 182, 0);
    task(id, "Shelf map and ice point", now, 150 + 90 * dryer, 365, 0);
  }

  private void task(
      long id, String name, Instant now, int daysAgo, int everyDays, double runningHours) {
    Instant last = now.minus(Duration.ofDays(daysAgo)).truncatedTo(ChronoUnit.HOURS);
    care.set(
        id,
        new CareTask(
            name, Optional.of(last), Optional.of(Duration.ofDays(everyDays)), runningHours));
  }

  /** Bands narrow as runs teach; the recipe follows, from 50 h to 35 h of primary drying. */
  private void predictions(long id, Instant start, Random chance) {
    int count = 18;
    for (int run = 0; run < count; run++) {
      double learned = Math.min(1, run / 10.0);
      double truth = (31 + 0.8 * chance.nextGaussian()) * HOUR_S;
      double spread = 0.16 - 0.11 * learned;
      double predicted = truth * (1 + 0.55 * spread * chance.nextGaussian());
      double recipe = HOUR_S * Math.round(50 - 15 * learned);
      use.add(
          new KeptUse.Prediction(
              "bog-myrtle " + run,
              id,
              "Bog-myrtle extract, run " + (run + 1),
              "Bog-myrtle extract in 10R",
              start.plus(Duration.ofDays(Math.round(700.0 * run / count))),
              predicted,
              predicted * (1 - 1.645 * spread),
              predicted * (1 + 1.645 * spread),
              truth,
              recipe));
    }
  }

  private static String key(int dryer, int run) {
    return "invented " + dryer + "/" + run;
  }

  private static String title(int dryer, int run) {
    return "Fen " + dryer + ", run " + (run + 1);
  }
}
