package org.firnline.learning.run;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How often intervals hold the truth, and how far the best values lie off, over simulated runs. */
record CoverageStudy(int runs, Map<Parameter, Integer> holds, Map<Parameter, Double> biases) {

  private static final List<Parameter> ASKED =
      List.of(
          Parameter.HEAT_TRANSFER,
          Parameter.INITIAL_RESISTANCE,
          Parameter.RESISTANCE_GROWTH,
          Parameter.RESISTANCE_LEVELING);

  static CoverageStudy of(long seed, int runs) {
    Map<Parameter, Integer> holds = new EnumMap<>(Parameter.class);
    Map<Parameter, Double> biases = new EnumMap<>(Parameter.class);
    for (int run = 0; run < runs; run++) {
      SimulatedRuns.Drawn drawn = SimulatedRuns.draw(seed, run);
      RunLesson lesson = RunFit.learn(drawn.vessel(), SimulatedRuns.PRIORS);
      for (Parameter parameter : ASKED) {
        int index = ASKED.indexOf(parameter);
        double scale = index == 0 ? SimulatedRuns.TUBING.at(drawn.vessel().meanPressure()) : 1;
        double truth = scale * drawn.truth()[index];
        Learned learned = lesson.of(parameter);
        holds.merge(parameter, learned.holds(truth) ? 1 : 0, Integer::sum);
        biases.merge(parameter, (learned.best() / truth - 1) / runs, Double::sum);
      }
    }
    return new CoverageStudy(runs, holds, biases);
  }

  /** Intervals of all parameters that hold the truth. */
  int held() {
    return holds.values().stream().mapToInt(Integer::intValue).sum();
  }

  double bias(Parameter parameter) {
    return biases.get(parameter);
  }

  /** The study for a terminal or a page. */
  public static void main(String... arguments) {
    int runs = Integer.parseInt(arguments[0]);
    CoverageStudy study = of(2026, runs);
    System.out.println(
        "| parameter | 90 % intervals that hold the truth | mean of best/truth - 1 |");
    System.out.println("|---|---|---|");
    for (Parameter parameter : ASKED) {
      System.out.println(
          String.format(
              Locale.ROOT,
              "| %s | %.1f %% | %+.2f %% |",
              parameter.label(),
              100.0 * study.holds().get(parameter) / runs,
              100 * study.bias(parameter)));
    }
  }
}
