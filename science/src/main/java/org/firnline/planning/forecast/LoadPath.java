package org.firnline.planning.forecast;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.FrontFollower;
import org.firnline.drying.recipe.Track;
import org.firnline.matter.Water;

/**
 * One possible truth on its way through a program: all vessels that stand for the load,
 * quasi-steady on the pressure they share. The hot loop of every forecast.
 *
 * <p>Midpoint steps in time, short enough that no front covers more than a sixtieth of its way and
 * that a ramp is followed; a step ends where a leg begins, and the last ice is met on a straight
 * line.
 */
final class LoadPath {

  private static final double STEP_SHARE = 1.0 / 60;
  private static final double RAMP_STEP_K = 3;
  private static final double LONGEST_STEP_S = 7_200;

  /** Nobody waits longer, s: a year. */
  private static final double LONGEST_S = 365.25 * 86_400;

  private final SampledVessels load;
  private final VaporPath path;
  private final ChamberPressure chamber;
  private final FrontFollower[] fronts;
  private final double[] thickness;
  private final double[] depth;
  private final double[] speed;
  private final double[] ends;
  private final double[] warmest;
  private double shelf;
  private double totalRate;
  private double pressure;
  private boolean overloaded;
  private double peakRate;
  private double peakPressure;

  LoadPath(SampledVessels load, VaporPath path) {
    this.load = load;
    this.path = path;
    this.chamber = new ChamberPressure(path);
    int size = load.size();
    this.fronts = new FrontFollower[size];
    this.thickness = new double[size];
    this.depth = new double[size];
    this.speed = new double[size];
    this.ends = new double[size];
    this.warmest = new double[load.items()];
    Arrays.fill(ends, Double.POSITIVE_INFINITY);
    for (int i = 0; i < size; i++) {
      fronts[i] = new FrontFollower(load.vessel(i));
      thickness[i] = load.vessel(i).geometry().thickness();
    }
  }

  SampledTruth follow(DryingProgram program) {
    Track track = program.shelf();
    double[] bends = track.bends();
    double[] starts = program.starts();
    int legs = starts.length;
    double[] legExcess = new double[legs];
    double[] legLoad = new double[legs];
    Arrays.fill(legExcess, Double.NEGATIVE_INFINITY);
    double time = 0;
    for (int leg = 0; leg < legs && !done(); leg++) {
      double end = leg + 1 < legs ? starts[leg + 1] : LONGEST_S;
      OptionalDouble set = program.legs().get(leg).pressure_Pa();
      while (time < end && !done()) {
        double next = Math.min(end, nextBend(bends, time));
        time = step(track, set, time, next, leg, legExcess, legLoad);
      }
      if (!done()) {
        settle(track.at(Math.nextDown(end)), set, depth);
        observe(leg, legExcess, legLoad, set);
      }
    }
    return truth(legExcess, legLoad);
  }

  private double step(
      Track track,
      OptionalDouble set,
      double time,
      double bend,
      int leg,
      double[] legExcess,
      double[] legLoad) {
    double shelfNow = track.at(time);
    settle(shelfNow, set, depth);
    observe(leg, legExcess, legLoad, set);
    double length = Math.min(bend - time, longest());
    double shelfThen = track.at(Math.nextDown(time + length));
    if (Math.abs(shelfThen - shelfNow) > RAMP_STEP_K) {
      length *= RAMP_STEP_K / Math.abs(shelfThen - shelfNow);
    }
    double[] middle = depth.clone();
    for (int i = 0; i < middle.length; i++) {
      middle[i] = Math.min(thickness[i], middle[i] + speed[i] * length / 2);
    }
    settle(track.at(time + length / 2), set, middle);
    for (int i = 0; i < depth.length; i++) {
      if (isWet(i)) {
        advance(i, time, length);
      }
    }
    return time + length;
  }

  private void advance(int i, double time, double length) {
    double reached = depth[i] + speed[i] * length;
    if (reached >= thickness[i]) {
      ends[i] = time + (thickness[i] - depth[i]) / speed[i];
      depth[i] = thickness[i];
      if (pressure <= Water.TRIPLE_POINT_PRESSURE) {
        solve(i, pressure, FastFront.coldest(pressure), depth[i]);
        note(i);
      }
    } else {
      depth[i] = reached;
    }
  }

  /** Longest step from here, s. */
  private double longest() {
    double longest = LONGEST_STEP_S;
    for (int i = 0; i < speed.length; i++) {
      if (isWet(i) && speed[i] > 0) {
        longest = Math.min(longest, STEP_SHARE * thickness[i] / speed[i]);
      }
    }
    return longest;
  }

  /** Solves every front at these depths on the pressure they share. */
  private void settle(double shelf_K, OptionalDouble set, double[] at) {
    shelf = shelf_K;
    DoubleUnaryOperator vapor = at_Pa -> total(at_Pa, at);
    double meeting =
        set.isPresent() ? chamber.held(set.getAsDouble(), vapor) : chamber.floating(vapor);
    if (Double.isNaN(meeting)) {
      overloaded = true;
      return;
    }
    pressure = meeting;
    totalRate = 0;
    double coldest = FastFront.coldest(pressure);
    for (int i = 0; i < depth.length; i++) {
      speed[i] = 0;
      if (isWet(i)) {
        double rate = solve(i, pressure, coldest, at[i]);
        totalRate += load.count(i) * rate;
        speed[i] = rate / load.vessel(i).geometry().icePerDepth(at[i]);
      }
    }
  }

  private double total(double at_Pa, double[] at) {
    double coldest = FastFront.coldest(at_Pa);
    double sum = 0;
    for (int i = 0; i < at.length; i++) {
      if (load.count(i) > 0 && isWet(i)) {
        sum += load.count(i) * solve(i, at_Pa, coldest, at[i]);
      }
    }
    return sum;
  }

  private double solve(int i, double at_Pa, double coldest, double at) {
    return fronts[i].solve(load.heat(i).at(shelf, at_Pa), at_Pa, coldest, at);
  }

  private void observe(int leg, double[] legExcess, double[] legLoad, OptionalDouble set) {
    if (overloaded) {
      legExcess[leg] = Water.TRIPLE_POINT_TEMPERATURE;
      legLoad[leg] = Double.POSITIVE_INFINITY;
      return;
    }
    for (int i = 0; i < depth.length; i++) {
      if (isWet(i)) {
        note(i);
        double limit = load.limit(i);
        legExcess[leg] = Math.max(legExcess[leg], fronts[i].warmest() - limit);
      }
    }
    peakRate = Math.max(peakRate, totalRate);
    peakPressure = Math.max(peakPressure, pressure);
    if (set.isPresent()) {
      legLoad[leg] = Math.max(legLoad[leg], relativeLoad(set.getAsDouble()));
    }
  }

  /** Above 1 where the pressure has left its setting. */
  private double relativeLoad(double set_Pa) {
    double carried = path.rate(pressure);
    double share = Double.isInfinite(carried) ? 0 : totalRate / carried;
    return pressure > set_Pa ? Math.max(share, pressure / set_Pa) : Math.min(1, share);
  }

  private void note(int i) {
    int item = load.item(i);
    double temperature = fronts[i].melts() ? Water.TRIPLE_POINT_TEMPERATURE : fronts[i].warmest();
    warmest[item] = Math.max(warmest[item], temperature);
  }

  private boolean isWet(int i) {
    return Double.isInfinite(ends[i]);
  }

  private boolean done() {
    if (overloaded) {
      return true;
    }
    for (int i = 0; i < ends.length; i++) {
      if (isWet(i)) {
        return false;
      }
    }
    return true;
  }

  private double nextBend(double[] bends, double time) {
    for (double bend : bends) {
      if (bend > time) {
        return bend;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private SampledTruth truth(double[] legExcess, double[] legLoad) {
    int items = warmest.length;
    double[] last = new double[items];
    double[] typical = new double[items];
    for (int i = 0; i < ends.length; i++) {
      int item = load.item(i);
      last[item] = Math.max(last[item], ends[i]);
      if (load.isTypical(i)) {
        typical[item] = Math.max(typical[item], ends[i]);
      }
    }
    for (int item = 0; item < items; item++) {
      if (overloaded || warmest[item] >= Water.TRIPLE_POINT_TEMPERATURE) {
        last[item] = Double.POSITIVE_INFINITY;
        warmest[item] = Water.TRIPLE_POINT_TEMPERATURE;
      }
    }
    return new SampledTruth(
        values(last),
        values(typical),
        values(warmest),
        IntStream.range(0, items).mapToObj(load::limitOfItem).toList(),
        values(legExcess),
        values(legLoad),
        peakRate,
        overloaded ? Double.NaN : peakPressure);
  }

  private static List<Double> values(double... array) {
    return Arrays.stream(array).boxed().toList();
  }
}
