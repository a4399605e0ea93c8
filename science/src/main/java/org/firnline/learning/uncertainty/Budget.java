package org.firnline.learning.uncertainty;

import java.util.ArrayList;
import java.util.List;
import org.firnline.numerics.StudentT;

/**
 * A result with what each input adds to its uncertainty.
 *
 * <p>Law of propagation: u²(y) = Σᵢ Σⱼ cᵢ cⱼ u(xᵢ) u(xⱼ) r(xᵢ, xⱼ); the sensitivities cᵢ u(xᵢ) are
 * half the change of the result from one standard uncertainty below to one above. Effective degrees
 * of freedom after Welch and Satterthwaite, for independent inputs.
 *
 * <p>Valid: functions that are nearly straight over the uncertainty of their inputs.
 *
 * <p>Source: JCGM 100:2008 (guide to the expression of uncertainty in measurement), 5.1.2, 5.1.3
 * note 2, 5.2.2, G.4.1.
 *
 * @param value the result, SI
 * @param parts one for each input, in the order given
 * @param uncertainty combined standard uncertainty; 0 or more
 * @param freedom effective degrees of freedom; infinite where every input's are
 */
public record Budget(double value, List<Part> parts, double uncertainty, double freedom) {

  /**
   * What one input adds.
   *
   * @param input the input
   * @param change of the result when the input grows by its standard uncertainty, signed
   */
  public record Part(MeasuredInput input, double change) {}

  /** A result as a function of its inputs, in their order. */
  @FunctionalInterface
  public interface Formula {

    /** The result. */
    double of(double[] inputs);
  }

  public Budget {
    parts = List.copyOf(parts);
  }

  /** The budget of independent inputs. */
  public static Budget of(Formula formula, List<MeasuredInput> inputs) {
    double[][] independent = new double[inputs.size()][inputs.size()];
    for (int i = 0; i < independent.length; i++) {
      independent[i][i] = 1;
    }
    return of(formula, inputs, independent);
  }

  /**
   * The budget of inputs that may go together.
   *
   * @param correlation estimated correlation coefficients, symmetric, 1 on the diagonal
   */
  public static Budget of(Formula formula, List<MeasuredInput> inputs, double[][] correlation) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      double above = formula.of(shifted(inputs, i, 1));
      double below = formula.of(shifted(inputs, i, -1));
      parts.add(new Part(inputs.get(i), (above - below) / 2));
    }
    double variance = 0;
    double fourth = 0;
    for (int i = 0; i < parts.size(); i++) {
      for (int j = 0; j < parts.size(); j++) {
        variance += parts.get(i).change() * parts.get(j).change() * correlation[i][j];
      }
      fourth += Math.pow(parts.get(i).change(), 4) / parts.get(i).input().freedom();
    }
    double freedom = fourth == 0 ? Double.POSITIVE_INFINITY : variance * variance / fourth;
    return new Budget(
        formula.of(shifted(inputs, 0, 0)), parts, Math.sqrt(Math.max(0, variance)), freedom);
  }

  /**
   * Half the width of an interval around the value that holds the truth with {@code probability}.
   * Degrees of freedom are cut to a whole number first, as the guide advises.
   *
   * @param probability above 0 and below 1
   */
  public double expanded(double probability) {
    double whole = Double.isInfinite(freedom) ? freedom : Math.max(1, Math.floor(freedom));
    return StudentT.coverageFactor(probability, whole) * uncertainty;
  }

  /** Uncertainty as a share of the value. */
  public double relative() {
    return uncertainty / Math.abs(value);
  }

  private static double[] shifted(List<MeasuredInput> inputs, int moved, double deviations) {
    double[] values = inputs.stream().mapToDouble(MeasuredInput::best).toArray();
    values[moved] += deviations * inputs.get(moved).uncertainty();
    return values;
  }
}
