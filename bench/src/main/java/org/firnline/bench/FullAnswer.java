package org.firnline.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.firnline.bench.VialCases.VialCaseInput;
import org.firnline.drying.primary.PrimaryDrying;
import org.firnline.drying.primary.PrimaryDryingResult;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The reference model of one vial at constant settings, with everything it reports. */
@Question(
    asks = "How many vials can the reference model dry?",
    counts = "vials",
    baseline =
        "the Dormand–Prince 8(5,3) integrator of Hipparchus on the same front balance, marching in"
            + " depth at tolerance 1e-13",
    trap =
        "The reference model also looks for melting and for the warmest point and the greatest rate,"
            + " which cost it most of its time; the baseline is asked for the drying time alone. A"
            + " looser baseline would win by being less exact: a test holds both to the same time"
            + " within 1e-11.")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FullAnswer {
  static final double TOLERANCE = 1e-13;

  private final List<VialCaseInput> cases = VialCases.all();
  private final PrimaryDrying drying = new PrimaryDrying();
  private final MarchInDepth march = new MarchInDepth(TOLERANCE);
  private int turn;

  @Benchmark
  public PrimaryDryingResult firnline() {
    VialCaseInput vial = next();
    return drying.run(vial.vessel(), vial.supply(), vial.pressure_Pa());
  }

  @Benchmark
  public double baseline() {
    VialCaseInput vial = next();
    return march.dryingTime(vial.vessel(), vial.supply(), vial.pressure_Pa());
  }

  private VialCaseInput next() {
    turn = (turn + 1) % cases.size();
    return cases.get(turn);
  }
}
