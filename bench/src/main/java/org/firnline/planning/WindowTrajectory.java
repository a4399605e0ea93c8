package org.firnline.planning;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.firnline.bench.MarchInDepth;
import org.firnline.bench.Question;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Product;
import org.firnline.lab.Solution;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The hot spot of window map and risk bands: one vial at one constant setting. Lives in the package
 * of what it measures, which is hidden from others.
 */
@Question(
    asks = "How many vials at constant settings can a window map dry?",
    counts = "trajectories",
    baseline =
        "the Dormand–Prince 8(5,3) integrator of Hipparchus on the same front balance, marching in"
            + " depth at tolerance 1e-4",
    trap =
        "An integrator is as slow as the accuracy it is asked for, so the baseline gets the loosest"
            + " power of ten at which it is as exact as the map (a test holds both, see there); it"
            + " marches in depth, where it needs no search for the end, and is asked for the time"
            + " only, while the map also wants the warmest point and the greatest rate. Sixty-four"
            + " different vials take turns.")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WindowTrajectory {
  static final double TOLERANCE = 1e-4;

  private final List<Case> cases = cases();
  private final Trajectories trajectories = new Trajectories();
  private final MarchInDepth march = new MarchInDepth(TOLERANCE);
  private int turn;

  /**
   * An invented vial and its settings.
   *
   * @param vial the vial
   * @param hold its settings
   */
  record Case(VialCase vial, Hold hold) {}

  @Benchmark
  public double firnline() {
    Case next = next();
    return trajectories.of(next.vial(), next.hold()).time();
  }

  @Benchmark
  public double baseline() {
    Case next = next();
    return march.dryingTime(
        next.vial().vessel(), next.vial().supply(next.hold()), next.hold().pressure_Pa());
  }

  /** Eight shelf temperatures by eight pressures, each with another vial; all of them dry. */
  static List<Case> cases() {
    VialCase typical = VialCase.typical(load());
    return IntStream.range(0, 64)
        .mapToObj(
            i ->
                new Case(
                    typical.filledBy(0.7 + 0.01 * i).hinderedBy(1.5 - 0.01 * i),
                    new Hold(238 + 5 * (i / 8), 4 + 2 * (i % 8))))
        .toList();
  }

  private Case next() {
    turn = (turn + 1) % cases.size();
    return cases.get(turn);
  }

  private static LoadItem load() {
    Provenance invented = new Provenance.Assumed("invented for measuring speed");
    Product product =
        new Product(
            "five percent sugar",
            Solution.typical(1020, 0.05),
            new CakeResistance(5e4, 5e7, 500),
            new Estimate(1, 0.2, invented),
            new CriticalTemperature(
                CriticalTemperature.Kind.COLLAPSE, new Estimate(242, 1, invented)));
    return new LoadItem(product, Iso8362Vial.R10.nominal(), 3e-6, 100, 0.3);
  }
}
