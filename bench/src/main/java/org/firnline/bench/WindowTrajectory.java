package org.firnline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.HeatSupply;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.Solution;
import org.firnline.lab.Vial;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The hot spot of window map and risk bands: one vial at one constant setting. */
@Question(
    asks = "How many vials at constant settings can one core dry?",
    counts = "trajectories",
    baseline =
        "the Dormand–Prince 8(5,3) integrator of Hipparchus on the reference front balance,"
            + " marching in depth at tolerance 1e-5",
    trap =
        "An integrator is as slow as the accuracy it is asked for, so the baseline gets the loosest"
            + " power of ten at which it is as exact as the map (a test holds both, see there); it"
            + " marches in depth, where it needs no search for the end, and is asked for the time"
            + " only, while the map also wants the warmest point and the greatest rate. Much of the"
            + " ratio is the quicker front balance, not the quadrature: the row of the reference"
            + " model has the same balance on both sides. Sixty-four different vials take turns.")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WindowTrajectory {
  static final double TOLERANCE = 1e-5;

  private final List<Case> cases = cases();
  private final MarchInDepth march = new MarchInDepth(TOLERANCE);
  private int turn;

  /**
   * An invented vial and its settings.
   *
   * @param vessel the vial
   * @param supply its heat
   * @param pressure_Pa chamber pressure
   */
  record Case(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {}

  @Benchmark
  public double firnline() {
    Case next = next();
    return FastPrimaryDrying.run(next.vessel(), next.supply(), next.pressure_Pa()).time();
  }

  @Benchmark
  public double baseline() {
    Case next = next();
    return march.dryingTime(next.vessel(), next.supply(), next.pressure_Pa());
  }

  /** Eight shelf temperatures by eight pressures, each with another vial; all of them dry. */
  static List<Case> cases() {
    return IntStream.range(0, 64).mapToObj(WindowTrajectory::vial).toList();
  }

  private static Case vial(int number) {
    Vial vial = Iso8362Vial.R10.nominal();
    double fill = 3e-6 * (0.7 + 0.01 * number);
    Slab slab = Slab.of(Solution.typical(1020, 0.05), fill, vial.innerArea(), vial.outerArea());
    CakeResistance cake = new CakeResistance(5e4, 5e7, 500).times(1.5 - 0.01 * number);
    double pressure_Pa = 4 + 2 * (number % 8);
    double shelf_K = 238 + 5 * (number / 8);
    return new Case(
        new DryingVessel(slab, cake, 0),
        HeatSupply.fromShelf(vial.heatTransfer(), shelf_K, pressure_Pa),
        pressure_Pa);
  }

  private Case next() {
    turn = (turn + 1) % cases.size();
    return cases.get(turn);
  }
}
