package org.firnline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.firnline.drying.dryer.VaporDuct;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.load.CoupledDrying;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.LoadOutcome;
import org.firnline.drying.load.LoadSettings;
import org.firnline.drying.load.PressureControl;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.ShelfHeat;
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

/** A load that its duct cannot carry at the set point: pressure floats while it dries. */
@Question(
    asks = "How many loads too large for their dryer can be followed to the last ice?",
    counts = "loads",
    baseline =
        "the Dormand–Prince 8(5,3) integrator of Hipparchus marching in depth at tolerance 1e-7,"
            + " the pressure found by its bracketing solver between set point and triple point, on"
            + " the reference front balance",
    trap =
        "The baseline knows that there is one group of vials and one meeting of load and duct, and"
            + " looks for no other; Firnline looks for every meeting at every step. Both give the"
            + " same time within 1e-6 (a test holds them).")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class OverloadedDryer {
  static final double TOLERANCE = 1e-7;
  static final double SET_POINT_PA = 8;

  private final List<Overload> overloads = overloads();
  private int turn;

  /**
   * Equal vials on a narrow duct.
   *
   * @param group the vials
   * @param shelf_K shelf temperature
   * @param path the duct
   */
  record Overload(VesselGroup group, double shelf_K, VaporPath path) {}

  @Benchmark
  public double firnline() {
    return ours(next());
  }

  @Benchmark
  public double baseline() {
    return new FloatingMarch(next(), TOLERANCE).dryingTime();
  }

  static double ours(Overload overload) {
    var settings =
        new LoadSettings(
            overload.shelf_K(), new PressureControl.Held(SET_POINT_PA), overload.path());
    var run = CoupledDrying.run(DryingLoad.of(overload.group()), settings);
    return ((LoadOutcome.Dries) run.outcome()).time();
  }

  /** Sixteen, no two alike; the pressure of each floats from first to last. */
  static List<Overload> overloads() {
    return IntStream.range(0, 16).mapToObj(OverloadedDryer::overload).toList();
  }

  private static Overload overload(int number) {
    Vial vial = Iso8362Vial.R10.nominal();
    double fill = 3e-6 * (0.8 + 0.02 * number);
    Slab slab = Slab.of(Solution.typical(1020, 0.05), fill, vial.innerArea(), vial.outerArea());
    var group =
        new VesselGroup(
            4_000,
            new DryingVessel(slab, new CakeResistance(5e4, 5e7, 100), 0),
            ShelfHeat.of(vial.heatTransfer()));
    var duct = new VaporDuct(0.005, 0.8, 293, 1.33, 0);
    return new Overload(group, 262 + 0.5 * number, new VaporPath(List.of(duct), 0));
  }

  private Overload next() {
    turn = (turn + 1) % overloads.size();
    return overloads.get(turn);
  }
}
