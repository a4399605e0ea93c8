package org.firnline.planning.doubt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.firnline.numerics.SobolPoints;

/**
 * Shares of the variance of a result that each of its inputs causes: alone (first order) and with
 * everything it takes part in (total).
 *
 * <p>Assumes independent inputs, uniform on the unit cube. Costs (d + 2) n evaluations.
 *
 * <p>Source: first order after Saltelli, Annoni, Azzini et al., Comput. Phys. Commun. 181, 259
 * (2010), table 2 (b); total after Jansen, Comput. Phys. Commun. 117, 35 (1999), as in the same
 * table (f) (both from memory, checked against the analytic values of Ishigami and Homma).
 *
 * @param first share of each input alone; about 0 to 1
 * @param total share with all its interactions; about 0 to 1, not below {@code first}
 */
public record SobolIndices(List<Double> first, List<Double> total) {

  public SobolIndices {
    first = List.copyOf(first);
    total = List.copyOf(total);
  }

  /**
   * The indices of {@code result}.
   *
   * @param dimensions of the cube; 1 or more
   * @param samples n, best a power of two
   * @param seed of the points
   */
  public static SobolIndices of(
      ToDoubleFunction<double[]> result, int dimensions, int samples, long seed) {
    return ofAll(point -> List.of(result.applyAsDouble(point)), dimensions, samples, seed).get(0);
  }

  /** The indices of several results that come of the same evaluation; all must be finite. */
  public static List<SobolIndices> ofAll(Results results, int dimensions, int samples, long seed) {
    List<double[]> points = SobolPoints.of(samples, 2 * dimensions, seed);
    List<List<List<Double>>> rows =
        points.stream().parallel().map(point -> row(results, point, dimensions)).toList();
    int count = rows.get(0).get(0).size();
    return IntStream.range(0, count).mapToObj(i -> indices(rows, i, dimensions)).toList();
  }

  /** Results at a point of the unit cube. */
  @FunctionalInterface
  public interface Results {
    List<Double> at(double[] point);
  }

  /** f(A), f(B), and f of A with one coordinate of B, for every coordinate. */
  private static List<List<Double>> row(Results results, double[] point, int dimensions) {
    double[] a = Arrays.copyOf(point, dimensions);
    double[] b = Arrays.copyOfRange(point, dimensions, 2 * dimensions);
    List<List<Double>> row = new ArrayList<>();
    row.add(results.at(a));
    row.add(results.at(b));
    for (int i = 0; i < dimensions; i++) {
      double[] mixed = a.clone();
      mixed[i] = b[i];
      row.add(results.at(mixed));
    }
    return row;
  }

  private static SobolIndices indices(List<List<List<Double>>> rows, int result, int dimensions) {
    double mean = 0;
    for (List<List<Double>> row : rows) {
      mean += (row.get(0).get(result) + row.get(1).get(result)) / (2 * rows.size());
    }
    double variance = 0;
    double[] alone = new double[dimensions];
    double[] whole = new double[dimensions];
    for (List<List<Double>> row : rows) {
      double a = row.get(0).get(result) - mean;
      double b = row.get(1).get(result) - mean;
      variance += (a * a + b * b) / (2 * rows.size());
      for (int i = 0; i < dimensions; i++) {
        double mixed = row.get(2 + i).get(result) - mean;
        alone[i] += b * (mixed - a) / rows.size();
        whole[i] += (a - mixed) * (a - mixed) / (2 * rows.size());
      }
    }
    double scale = variance > 0 ? 1 / variance : 0;
    return new SobolIndices(scaled(alone, scale), scaled(whole, scale));
  }

  private static List<Double> scaled(double[] values, double scale) {
    return Arrays.stream(values).map(value -> value * scale).boxed().toList();
  }
}
