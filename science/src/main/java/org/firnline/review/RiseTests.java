package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.TimeAxis;

/**
 * Pressure-rise tests found in a log: the valve to the collector is shut for seconds, vapor of ice
 * raises the pressure. While ice lasts each test rises toward the vapor pressure of the ice; when
 * the ice is gone the rise stays away.
 *
 * <p>The level the rise tends to is that of P = P_∞ − (P_∞ − P_0) e^(−kt), least squares over k:
 * the vapor pressure of ice plus what leaks in over 1/k, so an upper bound for the ice. Valid where
 * the log holds five samples or more of the rise.
 *
 * <p>Source: isothermal balance of a shut chamber, derivation in docs/science.md; the method's
 * origin in N. Milton et al., J. Pharm. Pharmacol. 1997 as quoted there.
 */
final class RiseTests {
  private static final int LEAST_SAMPLES = 5;
  private static final int REGULAR = 3;

  /** A rise of less than this share of the first ones is none of ice. */
  private static final double NO_ICE = 0.2;

  private static final double SLOWEST_PER_S = 0.005;
  private static final double FASTEST_PER_S = 2;

  /**
   * One test.
   *
   * @param rise where it is on the review's grid
   * @param tendsTo_Pa the level the pressure tends to; empty if the log is too coarse to tell
   */
  record RiseTest(PressureRise rise, OptionalDouble tendsTo_Pa) {}

  private RiseTests() {}

  static List<RiseTest> of(Run run, List<PressureRise> shortRises) {
    List<RiseTest> tests = new ArrayList<>();
    for (PressureRise rise : shortRises) {
      tests.add(new RiseTest(rise, tendsTo(run, rise)));
    }
    return tests;
  }

  /** The end of ice lies between the last test that rises and the first that does not. */
  static Optional<Endpoint> end(Run run, List<PressureRise> tests, int to) {
    if (tests.size() < REGULAR) {
      return Optional.empty();
    }
    PressureRise first = tests.get(0);
    double usual = first.peak_Pa() - first.base_Pa();
    PressureRise last = first;
    for (PressureRise test : tests) {
      last = test.peak_Pa() - test.base_Pa() > NO_ICE * usual ? test : last;
    }
    double every_s =
        (tests.get(tests.size() - 1).start() - first.start())
            * run.grid().step_s()
            / (tests.size() - 1);
    double last_s = run.grid().second(last.start());
    boolean goesOn = last_s + 1.5 * every_s < run.grid().second(to);
    if (!goesOn) {
      return Optional.of(
          Endpoint.ofLoadNotReached(
              first.channel(), Endpoint.Method.PRESSURE_RISE_TEST, ReviewWords.say("rise.still")));
    }
    return Optional.of(
        new Endpoint(
            Optional.empty(),
            first.channel(),
            Endpoint.Method.PRESSURE_RISE_TEST,
            Optional.of(run.grid().instantAt(last_s + every_s / 2)),
            Optional.of(run.grid().instantAt(last_s)),
            Optional.of(run.grid().instantAt(last_s + 1.1 * every_s)),
            Confidence.MEDIUM,
            ReviewWords.say("rise.end", Spoken.duration(every_s))));
  }

  private static OptionalDouble tendsTo(Run run, PressureRise rise) {
    Channel channel =
        run.all().stream()
            .filter(trace -> trace.name().equals(rise.channel()))
            .findFirst()
            .orElseThrow()
            .channel();
    TimeAxis time = run.log().time();
    double from_s = run.grid().second(rise.start()) - run.grid().step_s();
    double to_s = run.grid().second(rise.peak()) + run.grid().step_s() / 2;
    List<double[]> samples = new ArrayList<>();
    for (int i = 0; i < time.size(); i++) {
      double at = time.elapsed_s(i);
      double value = channel.series().value(i);
      if (at >= from_s && at <= to_s && !Double.isNaN(value)) {
        samples.add(new double[] {at - from_s, value});
      }
    }
    return samples.size() < LEAST_SAMPLES ? OptionalDouble.empty() : asymptote(samples);
  }

  /** Least squares over the rate; level and start are linear. */
  private static OptionalDouble asymptote(List<double[]> samples) {
    double least = Double.POSITIVE_INFINITY;
    double best = Double.NaN;
    for (double rate = SLOWEST_PER_S; rate < FASTEST_PER_S; rate *= 1.05) {
      double n = 0;
      double x1 = 0;
      double x2 = 0;
      double y1 = 0;
      double y2 = 0;
      double xy = 0;
      for (double[] sample : samples) {
        double x = Math.exp(-rate * sample[0]);
        n++;
        x1 += x;
        x2 += x * x;
        y1 += sample[1];
        y2 += sample[1] * sample[1];
        xy += x * sample[1];
      }
      double spread = x2 - x1 * x1 / n;
      double slope = (xy - x1 * y1 / n) / spread;
      double misfit = y2 - y1 * y1 / n - slope * slope * spread;
      if (misfit < least) {
        least = misfit;
        best = (y1 - slope * x1) / n;
      }
    }
    double highest = samples.stream().mapToDouble(s -> s[1]).max().orElseThrow();
    // A rise that has hardly begun to bend does not say where it leads.
    return best > 0.9 * highest && best < 2 * highest
        ? OptionalDouble.of(best)
        : OptionalDouble.empty();
  }
}
