package org.firnline.planning.doubt;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firnline.lab.LoadItem;
import org.firnline.planning.doubt.Share.Cause;
import org.firnline.planning.forecast.DryingProgram;
import org.firnline.planning.forecast.LoadForecaster;
import org.firnline.planning.forecast.Narrowing;
import org.firnline.planning.forecast.SampledLoad;
import org.firnline.planning.forecast.SampledTruth;
import org.firnline.planning.forecast.Sharing;

/**
 * What matters most for one program: shares of the variance of the finish and of the distance to
 * the critical temperature, and what each small test would do to the bands.
 *
 * <p>The finish counts by its logarithm. The risk itself is a share of runs; its variance is that
 * of the distance to the critical temperature, which decides it.
 *
 * @param finish shares of the variance of ln(time until the last vessel is dry)
 * @param margin shares of the variance of warmest temperature less critical temperature
 * @param measurements what each test would do, in the order of their effort
 */
public record WhatMatters(List<Share> finish, List<Share> margin, List<Narrowed> measurements) {

  private static final int SAMPLES = 512;
  private static final long SEED = 9_241;

  /** Inputs of one run that are not of one item: heat, last vessel, warmest vessel. */
  private static final int SHARED = 3;

  /** Nobody waits longer, s. */
  private static final double LONGEST_S = 365.25 * 86_400;

  /** A test that narrows no band to less than this share settles nothing; an assumption. */
  private static final double WORTH_IT = 0.8;

  private static final double LOW = 0.05;

  public WhatMatters {
    finish = List.copyOf(finish);
    margin = List.copyOf(margin);
    measurements = List.copyOf(measurements);
  }

  /** What matters for {@code program} on this load and dryer. */
  public static WhatMatters of(Sharing sharing, DryingProgram program) {
    LoadForecaster forecaster = new LoadForecaster(sharing);
    List<SobolIndices> indices =
        SobolIndices.ofAll(
            point -> results(forecaster.at(program, point)),
            forecaster.dimensions(),
            SAMPLES,
            SEED);
    SampledLoad now = forecaster.run(program);
    List<Narrowed> narrowed =
        Arrays.stream(Measurement.values())
            .sorted(Comparator.comparing(Measurement::effort_h))
            .map(test -> narrowed(sharing, program, test, now))
            .toList();
    return new WhatMatters(shares(indices.get(0)), shares(indices.get(1)), narrowed);
  }

  /**
   * The cheapest test that narrows a band to four fifths or less; else the one that narrows most;
   * empty where none narrows anything.
   */
  public Optional<Narrowed> cheapest() {
    return measurements.stream()
        .filter(test -> test.best() <= WORTH_IT)
        .findFirst()
        .or(
            () ->
                measurements.stream()
                    .filter(test -> test.best() < 1)
                    .min(Comparator.comparing(Narrowed::best)));
  }

  private static List<Double> results(SampledTruth truth) {
    return List.of(Math.log(Math.min(LONGEST_S, truth.lastOfAll())), truth.excess());
  }

  /** Inputs of one kind added up over the items. */
  private static List<Share> shares(SobolIndices indices) {
    int items = (indices.first().size() - SHARED) / 2;
    int[] resistances = IntStream.range(0, items).map(i -> SHARED + 2 * i).toArray();
    int[] criticals = IntStream.range(0, items).map(i -> SHARED + 2 * i + 1).toArray();
    return List.of(
        share(Cause.HEAT_TRANSFER, indices, 0),
        share(Cause.CAKE_RESISTANCE, indices, resistances),
        share(Cause.CRITICAL_TEMPERATURE, indices, criticals),
        share(Cause.VESSELS, indices, 1, 2));
  }

  private static Share share(Cause cause, SobolIndices indices, int... inputs) {
    return new Share(
        cause,
        Arrays.stream(inputs).mapToDouble(indices.first()::get).sum(),
        Arrays.stream(inputs).mapToDouble(indices.total()::get).sum());
  }

  private static Narrowed narrowed(
      Sharing sharing, DryingProgram program, Measurement test, SampledLoad now) {
    Narrowing by = narrowing(sharing, test);
    SampledLoad then = new LoadForecaster(sharing, now.truths().size(), by).run(program);
    return new Narrowed(
        test,
        ratio(then.timeWidth(), now.timeWidth()),
        ratio(width(then), width(now)),
        then.overheatingRisk());
  }

  private static double width(SampledLoad load) {
    return load.excess(1 - LOW) - load.excess(LOW);
  }

  /** Bands that never end, or have no width, do not narrow. */
  private static double ratio(double after, double before) {
    double ratio = after / before;
    return Double.isFinite(ratio) ? ratio : 1;
  }

  private static Narrowing narrowing(Sharing sharing, Measurement test) {
    List<LoadItem> items =
        sharing.load().portions().stream().map(portion -> portion.item()).toList();
    LoadForecaster one = new LoadForecaster(sharing, 1);
    double cake =
        items.stream()
            .map(item -> item.product().resistanceFactor())
            .mapToDouble(factor -> factor.spread() / factor.best())
            .max()
            .orElse(0);
    return switch (test) {
      case WEIGHED_ICE_RUN -> new Narrowing(left(test, one.heatSpread()), 1, 1);
      case PRESSURE_RISE_TEST -> new Narrowing(1, left(test, cake), 1);
      case MICROSCOPE -> new Narrowing(1, 1, left(test, one.criticalSpread()));
    };
  }

  /** A test cannot make known values less known. */
  private static double left(Measurement test, double spread) {
    return spread > 0 ? Math.min(1, test.spreadAfter() / spread) : 1;
  }
}
