package org.firnline.planning.design;

import java.util.List;
import java.util.stream.IntStream;
import org.firnline.drying.freezing.FreezingCourse;
import org.firnline.drying.freezing.FreezingMoment;
import org.firnline.drying.freezing.FreezingVessel;
import org.firnline.drying.freezing.NucleationSpread;
import org.firnline.drying.freezing.VesselFreezing;
import org.firnline.drying.recipe.Track;
import org.firnline.lab.Flask;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Piece;
import org.firnline.lab.Solution;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.firnline.lab.Vial;

/**
 * How long a shelf must stay cold until the slowest vessel is frozen through: one whose ice appears
 * late, at the lowest temperature in a hundred.
 *
 * <p>The computed time is never taken shorter than the rule of the trade: 1 h, and 1 h more for
 * every centimeter beyond the first (2.2 of the rules: 1 to 3 h plus 1 h per extra centimeter, from
 * memory).
 *
 * @param start shelf and product at the start, K
 * @param cold shelf temperature to freeze at, K
 * @param ramp K/s
 */
record FreezingProgram(double start, double cold, double ramp) {

  private static final double MELTING_K = 272.15;
  private static final double FROZEN_WITHIN_K = 2;
  private static final double LATE_DEVIATES = 2.33;
  private static final double LOOK_EVERY_S = 600;
  private static final int MOST_LOOKS = 6 * 48;
  private static final double HOUR_S = 3600;
  private static final double CENTIMETER_M = 0.01;
  private static final double ATMOSPHERE_PA = 101_325;

  /** Time on the cold shelf after the ramp for all items, s; whole ten minutes. */
  double hold(List<LoadItem> items) {
    double longest = items.stream().mapToDouble(this::hold).max().orElseThrow();
    return Math.ceil(longest / LOOK_EVERY_S) * LOOK_EVERY_S;
  }

  private double hold(LoadItem item) {
    double extra = Math.max(0, item.frozenDepth() - CENTIMETER_M) / CENTIMETER_M;
    return Math.max(HOUR_S * (1 + extra), frozenThrough(item) - rampTime());
  }

  private double rampTime() {
    return Math.abs(start - cold) / ramp;
  }

  private double frozenThrough(LoadItem item) {
    Track shelf =
        Track.through(List.of(new Track.Point(0, start), new Track.Point(rampTime(), cold)));
    NucleationSpread spread = NucleationSpread.UNCONTROLLED;
    double late = spread.mean() - LATE_DEVIATES * spread.spread();
    double nucleation = Math.min(MELTING_K - 1, Math.max(late, cold + FROZEN_WITHIN_K));
    List<Double> looks =
        IntStream.rangeClosed(1, MOST_LOOKS).mapToObj(i -> i * LOOK_EVERY_S).toList();
    FreezingCourse course =
        new VesselFreezing().course(vessel(item), shelf, start, nucleation, looks);
    return course.moments().stream()
        .filter(moment -> moment.stage() == FreezingMoment.Stage.FROZEN)
        .filter(moment -> Math.max(moment.top(), moment.bottom()) <= cold + FROZEN_WITHIN_K)
        .mapToDouble(FreezingMoment::time)
        .findFirst()
        .orElse(MOST_LOOKS * LOOK_EVERY_S);
  }

  private static FreezingVessel vessel(LoadItem item) {
    Solution solution = item.product().solution();
    return item.vessel()
        .fold(
            new Vessel.Cases<FreezingVessel>() {
              @Override
              public FreezingVessel vial(Vial vial) {
                double onProduct = vial.outerArea() / vial.innerArea();
                double heat = vial.heatTransfer().at(ATMOSPHERE_PA) * onProduct;
                return flat(vial.innerArea(), heat);
              }

              @Override
              public FreezingVessel tray(Tray tray) {
                return flat(tray.area(), tray.heatTransfer().at(ATMOSPHERE_PA));
              }

              /** In a cold bath, not on a shelf; taken as well coupled. */
              @Override
              public FreezingVessel flask(Flask flask) {
                double volume = solution.frozenVolume(item.fill());
                return flat(volume / flask.frozenThickness(volume), 100);
              }

              @Override
              public FreezingVessel piece(Piece piece) {
                return flat(2 * piece.faceArea(), piece.heat().coefficient().best());
              }

              private FreezingVessel flat(double area, double coefficient) {
                return FreezingVessel.of(solution, item.fill(), area, coefficient, 0, MELTING_K);
              }
            });
  }
}
