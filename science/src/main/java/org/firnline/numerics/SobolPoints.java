package org.firnline.numerics;

import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points that fill the unit cube more evenly than chance, for averages over few uncertain inputs.
 *
 * <p>The sequence is shifted as a whole (modulo 1) by an amount drawn from the seed, so that no
 * point lies on a face and different seeds give independent answers.
 *
 * <p>Source: Sobol, USSR Comput. Math. Math. Phys. 7, 86 (1967), direction numbers of Joe &amp; Kuo
 * (2008) in the library; shift after Cranley &amp; Patterson, SIAM J. Numer. Anal. 13, 904 (1976).
 */
public final class SobolPoints {

  private static final double INSIDE = 0x1p-40;

  private SobolPoints() {}

  /**
   * The first points.
   *
   * @param count how many; a power of two fills the cube most evenly
   * @param dimensions 1 or more
   */
  public static List<double[]> of(int count, int dimensions, long seed) {
    var sequence = new SobolSequenceGenerator(dimensions);
    var shift = new SeededUniform(seed);
    return Stream.generate(sequence::nextVector)
        .limit(count)
        .map(point -> shifted(point, shift))
        .toList();
  }

  private static double[] shifted(double[] point, SeededUniform shift) {
    double[] moved = new double[point.length];
    for (int axis = 0; axis < point.length; axis++) {
      double sum = point[axis] + shift.at(axis, 0, 0);
      double inside = sum - Math.floor(sum);
      moved[axis] = Math.min(1 - INSIDE, Math.max(INSIDE, inside));
    }
    return moved;
  }
}
