package org.firnline.learning.run;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.drying.primary.Slab;
import org.firnline.drying.recipe.Schedule;
import org.firnline.drying.recipe.ThermalMass;
import org.firnline.drying.recipe.Track;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Vial;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.matter.Water;
import org.firnline.review.Endpoint;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.firnline.review.signal.Grid;
import org.firnline.review.signal.Signal;

/**
 * Finds in a reviewed log what the fit needs: shelf and pressure as they were, and each product
 * thermometer while ice covered it.
 *
 * <p>Readings stop at 85 % of the way to the end of ice, where a thermometer begins to lose its
 * ice. The vessel stores the heat of its glass up to the fill and of its frozen product.
 */
public final class ProbedVessels {

  /** Ice sublimes noticeably below this chamber pressure, Pa. */
  private static final double SUBLIMES_PA = 100;

  private static final double OVER_ICE = 0.85;
  private static final double SETTLED_S = 1200;
  private static final int READINGS = 40;
  private static final double FIRST_HOURS_S = 3 * 3600;
  private static final double FINE_S = 300;
  private static final double COARSE_S = 1200;
  private static final double LEAST_DOUBT = 0.01;

  /** Borosilicate glass, J/(m3 K): 2230 kg/m3 and 830 J/(kg K), from memory. */
  private static final double GLASS_HEAT = 2230 * 830;

  /** Ice near −30 °C, J/(kg K); Feistel &amp; Wagner (2006) rounded. */
  private static final double ICE_HEAT = 1880;

  private final Log log;
  private final Review review;
  private final LoadItem item;
  private final Grid grid;

  private ProbedVessels(Log log, Review review, LoadItem item) {
    this.log = log;
    this.review = review;
    this.item = item;
    this.grid = Grid.over(log.time());
  }

  /**
   * The probed vessels of a run; empty where shelf, pressure or thermometers are missing, the
   * chamber never reached its vacuum, or a thermometer never left the ice.
   */
  public static List<ProbedVessel> in(Log log, Review review, LoadItem item) {
    return new ProbedVessels(log, review, item).find();
  }

  /** The gauge to trust: capacitance before one of unknown kind before a thermal one. */
  static Optional<Channel> gauge(Log log) {
    return log.findChannelIn(Role.PRESSURE_CAPACITANCE)
        .or(() -> log.findChannelIn(Role.PRESSURE))
        .or(() -> log.findChannelIn(Role.PRESSURE_THERMAL));
  }

  private List<ProbedVessel> find() {
    Optional<Channel> gauge = gauge(log);
    Optional<Channel> shelf =
        log.findChannelIn(Role.SHELF).or(() -> log.findChannelIn(Role.SHELF_SET_POINT));
    Optional<Phase> primary =
        review.phases().stream()
            .filter(phase -> phase.name() == Phase.Name.PRIMARY_DRYING)
            .findFirst();
    if (gauge.isEmpty() || shelf.isEmpty() || primary.isEmpty()) {
      return List.of();
    }
    Signal pressure = grid.sample(gauge.get().series());
    int end = grid.pointAt(primary.get().end());
    int start = firstVacuum(pressure, end).orElse(grid.pointAt(primary.get().start()));
    Schedule schedule = schedule(grid.sample(shelf.get().series()), pressure, start, end);
    List<ProbedVessel> vessels = new ArrayList<>();
    for (Endpoint endpoint : review.endpoints()) {
      if (endpoint.method() == Endpoint.Method.PRODUCT_THERMOMETER && endpoint.reached()) {
        vessel(endpoint, schedule, start).ifPresent(vessels::add);
      }
    }
    return vessels;
  }

  private Optional<Integer> firstVacuum(Signal pressure, int end) {
    Optional<Phase> evacuation =
        review.phases().stream().filter(phase -> phase.name() == Phase.Name.EVACUATION).findFirst();
    int from = evacuation.map(phase -> grid.pointAt(phase.start())).orElse(0);
    int first = pressure.firstBelow(SUBLIMES_PA, from, end);
    return first < 0 ? Optional.empty() : Optional.of(first);
  }

  private Schedule schedule(Signal shelf, Signal pressure, int start, int end) {
    List<Track.Point> shelves = new ArrayList<>();
    List<Track.Point> pressures = new ArrayList<>();
    double length = grid.second(end) - grid.second(start);
    for (double time = 0; time < length; time += time < FIRST_HOURS_S ? FINE_S : COARSE_S) {
      double half = time < FIRST_HOURS_S ? FINE_S / 2 : COARSE_S / 2;
      int from = Math.max(start, grid.pointAt(grid.second(start) + time - half));
      int to = Math.max(from + 1, grid.pointAt(grid.second(start) + time + half));
      double warm = shelf.medianIn(from, to);
      double high = pressure.medianIn(from, to);
      if (warm > 0) {
        shelves.add(new Track.Point(time, warm));
      }
      if (high > 0) {
        pressures.add(new Track.Point(time, Math.min(high, Water.TRIPLE_POINT_PRESSURE)));
      }
    }
    return new Schedule(Track.through(shelves), Track.through(pressures));
  }

  private Optional<ProbedVessel> vessel(Endpoint endpoint, Schedule schedule, int start) {
    Optional<Channel> channel =
        log.channelsIn(Role.PRODUCT).stream()
            .filter(one -> one.name().equals(endpoint.channel()))
            .findFirst();
    if (channel.isEmpty()) {
      return Optional.empty();
    }
    Signal product = grid.sample(channel.get().series());
    double end = seconds(start, endpoint.at().orElseThrow());
    double early = seconds(start, endpoint.low().orElseThrow());
    double late = seconds(start, endpoint.high().orElseThrow());
    List<ProbedVessel.TemperatureReading> readings = new ArrayList<>();
    double last = OVER_ICE * early;
    double width = (last - SETTLED_S) / READINGS;
    for (int i = 0; i < READINGS && width > 0; i++) {
      double from = SETTLED_S + i * width;
      int first = grid.pointAt(grid.second(start) + from);
      int next = Math.max(first + 1, grid.pointAt(grid.second(start) + from + width));
      double seen = product.medianIn(first, next);
      if (!Double.isNaN(seen)) {
        double middle = (grid.second(first) + grid.second(next - 1)) / 2 - grid.second(start);
        readings.add(new ProbedVessel.TemperatureReading(middle, seen));
      }
    }
    double begin = product.medianIn(start, start + Math.max(1, grid.steps(FINE_S)));
    if (readings.size() < READINGS / 2 || Double.isNaN(begin)) {
      return Optional.empty();
    }
    double doubt = Math.max(LEAST_DOUBT * end, (late - early) / 4);
    return Optional.of(
        new ProbedVessel(
            channel.get().name(),
            slab(),
            mass(),
            schedule,
            begin,
            readings,
            Optional.of(new ProbedVessel.EndOfIce(end, doubt))));
  }

  private double seconds(int start, Instant at) {
    return Duration.between(grid.instant(start), at).toMillis() / 1_000.0;
  }

  private Slab slab() {
    Vial vial = item.vial();
    return Slab.of(item.product().solution(), item.fill(), vial.innerArea(), vial.outerArea());
  }

  private ThermalMass mass() {
    Vial vial = item.vial();
    double wall = (vial.outerArea() - vial.innerArea()) * item.frozenDepth();
    double bottom = vial.outerArea() * vial.wallThickness();
    return new ThermalMass(GLASS_HEAT * (wall + bottom), ICE_HEAT * item.icePerVessel());
  }
}
