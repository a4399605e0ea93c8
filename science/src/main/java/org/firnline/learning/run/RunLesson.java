package org.firnline.learning.run;

import java.util.ArrayList;
import java.util.List;

/**
 * What one probed vessel of a run tells.
 *
 * @param vessel what was observed
 * @param learned one for each {@link Parameter}, in their order
 * @param correlations of the parameters after the fit, by their order; 0 where one is held
 * @param residuals of the thermometer
 * @param endMisfit predicted minus observed end of ice, s; NaN if the end is not known
 * @param noise standard deviation of a reading about the model that the fit ended with, K
 * @param together lag-one correlation of the residuals: above about 0.5 the model misses something
 * @param determined whether the search came to an end
 */
public record RunLesson(
    ProbedVessel vessel,
    List<Learned> learned,
    List<List<Double>> correlations,
    List<Residual> residuals,
    double endMisfit,
    double noise,
    double together,
    boolean determined) {

  private static final double INDISTINCT = 0.9;

  /**
   * A reading against the model.
   *
   * @param time s
   * @param observed K
   * @param predicted K, with the thermometer's offset
   */
  public record Residual(double time, double observed, double predicted) {

    /** Observed minus predicted, K. */
    public double difference() {
      return observed - predicted;
    }
  }

  /**
   * Two parameters that the data hardly tell apart.
   *
   * @param correlation −1 to 1
   */
  public record Pair(Parameter first, Parameter second, double correlation) {}

  public RunLesson {
    learned = List.copyOf(learned);
    correlations = correlations.stream().map(List::copyOf).toList();
    residuals = List.copyOf(residuals);
  }

  /** What is learned of one parameter. */
  public Learned of(Parameter parameter) {
    return learned.stream().filter(one -> one.parameter() == parameter).findFirst().orElseThrow();
  }

  /** Parameters of which only a combination is known, the most entangled first. */
  public List<Pair> indistinct() {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < learned.size(); i++) {
      for (int j = i + 1; j < learned.size(); j++) {
        double correlation = correlations.get(i).get(j);
        if (Math.abs(correlation) > INDISTINCT) {
          pairs.add(new Pair(learned.get(i).parameter(), learned.get(j).parameter(), correlation));
        }
      }
    }
    pairs.sort((a, b) -> Double.compare(Math.abs(b.correlation()), Math.abs(a.correlation())));
    return List.copyOf(pairs);
  }
}
