package org.firnline.learning.pool;

import java.util.ArrayList;
import java.util.List;

/**
 * Values of one quantity from several runs, vessels or dryers, pooled: each group has its own true
 * value, the true values scatter about a common one. DerSimonian and Laird's estimate of that
 * scatter; each group's value is then drawn toward the common one by how little its own data say.
 *
 * <p>Common value: weights 1/(s_i² + τ²). τ² = max(0, (Q − (k − 1))/(Σw − Σw²/Σw)) with w = 1/s_i²
 * and Q = Σ w (y_i − ȳ_w)². Drawn values: (y_i/s_i² + μ/τ²)/(1/s_i² + 1/τ²).
 *
 * <p>Valid: a quantity that may be added, such as a logarithm of a positive one. With fewer than
 * three groups τ is hardly known.
 *
 * <p>Source: DerSimonian &amp; Laird, Control. Clin. Trials 7, 177 (1986) (from memory); shrinkage
 * of the normal hierarchical model, Gelman et al., Bayesian Data Analysis, section 5.4 (from
 * memory).
 *
 * @param common μ
 * @param commonError standard error of μ
 * @param between τ: standard deviation of true values from group to group; 0 or more
 * @param groups each group drawn toward the common value, in the order given
 */
public record PooledValue(double common, double commonError, double between, List<Drawn> groups) {

  /**
   * One group's own result.
   *
   * @param name of the group
   * @param value y
   * @param error s: its standard error; positive
   */
  public record Group(String name, double value, double error) {

    public Group {
      if (!Double.isFinite(value) || !(error > 0) || Double.isInfinite(error)) {
        throw new IllegalArgumentException(name + " of " + value + " ± " + error);
      }
    }
  }

  /**
   * A group after pooling.
   *
   * @param group its own result
   * @param value drawn toward the common one
   * @param error standard deviation after pooling, τ taken as known
   * @param own share of its own data in {@code value}, 0 to 1
   */
  public record Drawn(Group group, double value, double error, double own) {}

  public PooledValue {
    groups = List.copyOf(groups);
  }

  /** Pools at least one group with τ from the data. */
  public static PooledValue of(List<Group> groups) {
    if (groups.isEmpty()) {
      throw new IllegalArgumentException("nothing to pool");
    }
    double weights = 0;
    double squares = 0;
    double sum = 0;
    for (Group group : groups) {
      double weight = 1 / (group.error() * group.error());
      weights += weight;
      squares += weight * weight;
      sum += weight * group.value();
    }
    double mean = sum / weights;
    double scatter = 0;
    for (Group group : groups) {
      double off = (group.value() - mean) / group.error();
      scatter += off * off;
    }
    double room = weights - squares / weights;
    double variance = room > 0 ? Math.max(0, (scatter - (groups.size() - 1)) / room) : 0;
    return with(groups, Math.sqrt(variance));
  }

  /** Pools with a known scatter between groups. */
  public static PooledValue with(List<Group> groups, double between) {
    double variance = between * between;
    double weights = 0;
    double sum = 0;
    for (Group group : groups) {
      double weight = 1 / (group.error() * group.error() + variance);
      weights += weight;
      sum += weight * group.value();
    }
    double common = sum / weights;
    List<Drawn> drawn = new ArrayList<>();
    for (Group group : groups) {
      double own = variance / (variance + group.error() * group.error());
      double value = own * group.value() + (1 - own) * common;
      double rest = (1 - own) * Math.sqrt(1 / weights);
      double error = Math.hypot(Math.sqrt(own) * group.error(), rest);
      drawn.add(new Drawn(group, value, error, own));
    }
    return new PooledValue(common, Math.sqrt(1 / weights), between, drawn);
  }

  /** Standard deviation for a group that has not been seen yet. */
  public double errorOfNext() {
    return Math.hypot(commonError, between);
  }
}
