package org.firnline.drying.primary;

/**
 * Abscissas and weights of the Gauss–Kronrod pair with 7 and 15 points on [−1, 1], in ascending
 * order.
 *
 * <p>Source: Kronrod, Nodes and Weights of Quadrature Formulas (1965), as tabulated in QUADPACK,
 * Piessens et al. (1983), routine QK15 (from memory; a test checks that polynomials of the degree
 * promised come out exactly).
 */
final class KronrodRule {

  static final int POINTS = 15;

  private static final double[] HALF_ABSCISSAS = {
    0.9914553711208126,
    0.9491079123427585,
    0.8648644233597691,
    0.7415311855993945,
    0.5860872354676911,
    0.4058451513773972,
    0.20778495500789848,
    0.0
  };

  private static final double[] HALF_WEIGHTS = {
    0.022935322010529224,
    0.06309209262997856,
    0.10479001032225019,
    0.14065325971552592,
    0.1690047266392679,
    0.19035057806478542,
    0.20443294007529889,
    0.20948214108472782
  };

  /** Weights of the seven points that the coarse rule shares with the fine one. */
  private static final double[] HALF_COARSE_WEIGHTS = {
    0.0,
    0.1294849661688697,
    0.0,
    0.27970539148927664,
    0.0,
    0.3818300505051189,
    0.0,
    0.4179591836734694
  };

  private static final double[] ABSCISSAS = mirrored(HALF_ABSCISSAS, -1);
  private static final double[] WEIGHTS = mirrored(HALF_WEIGHTS, 1);
  private static final double[] COARSE_WEIGHTS = mirrored(HALF_COARSE_WEIGHTS, 1);

  private KronrodRule() {}

  static double abscissa(int point) {
    return ABSCISSAS[point];
  }

  /** Weight of the fine rule. */
  static double weight(int point) {
    return WEIGHTS[point];
  }

  /** Weight of the coarse rule; 0 at the points it does not use. */
  static double coarseWeight(int point) {
    return COARSE_WEIGHTS[point];
  }

  private static double[] mirrored(double[] half, int lowSign) {
    double[] all = new double[POINTS];
    for (int point = 0; point < half.length; point++) {
      all[point] = lowSign * half[point];
      all[POINTS - 1 - point] = half[point];
    }
    return all;
  }
}
