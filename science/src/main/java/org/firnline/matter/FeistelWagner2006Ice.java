package org.firnline.matter;

/**
 * Equation of state of ordinary ice (Ih): density, heat capacity, enthalpy and their kin from the
 * Gibbs energy g(T, p).
 *
 * <p>g = g₀(p) − s₀ T_t τ + T_t Re Σ r_k [(t_k−τ) ln(t_k−τ) + (t_k+τ) ln(t_k+τ) − 2 t_k ln t_k −
 * τ²/t_k], τ = T/T_t, with g₀ a quartic and r₂ a quadratic in p.
 *
 * <p>Valid: 0 K to the melting line, 0 to 210 MPa; here up to 273.16 K.
 *
 * <p>Source: IAPWS R10-06(2009); Feistel &amp; Wagner, J. Phys. Chem. Ref. Data 35, 1021 (2006)
 * (coefficients from memory, confirmed by the check values of its table 6 to ten digits).
 */
public final class FeistelWagner2006Ice {

  private static final double NORMAL_PRESSURE = 101_325;
  private static final double SCALE_TEMPERATURE = Water.TRIPLE_POINT_TEMPERATURE;
  private static final double SCALE_PRESSURE = Water.TRIPLE_POINT_PRESSURE;

  private static final double[] G0 = {
    -0.632020233335886e6,
    0.655022213658955,
    -0.189369929326131e-7,
    0.339746123271053e-14,
    -0.556464869058991e-21
  };
  private static final double S0 = -0.332733756492168e4;
  private static final Complex T1 = new Complex(0.368017112855051e-1, 0.510878114959572e-1);
  private static final Complex R1 = new Complex(0.447050716285388e2, 0.656876847463481e2);
  private static final Complex T2 = new Complex(0.337315741065416, 0.335449415919309);
  private static final Complex[] R2 = {
    new Complex(-0.725974574329220e2, -0.781008427112870e2),
    new Complex(-0.557107698030123e-4, 0.464578634580806e-4),
    new Complex(0.234801409215913e-10, -0.285651142904972e-10)
  };

  /** Density in kg/m3 at {@code temperature_K} and {@code pressure_Pa}. */
  public double density(double temperature_K, double pressure_Pa) {
    return 1 / volume(temperature_K, pressure_Pa);
  }

  /** Isobaric heat capacity in J/(kg K) at {@code temperature_K} and {@code pressure_Pa}. */
  public double heatCapacity(double temperature_K, double pressure_Pa) {
    double tau = tau(temperature_K);
    double sum = R1.times(curvature(T1, tau)).real();
    sum += residue(pressure_Pa, 0).times(curvature(T2, tau)).real();
    return -temperature_K * sum / SCALE_TEMPERATURE;
  }

  /**
   * Enthalpy in J/kg at {@code temperature_K} and {@code pressure_Pa}; 0 for liquid water at the
   * triple point.
   */
  public double enthalpy(double temperature_K, double pressure_Pa) {
    return gibbsEnergy(temperature_K, pressure_Pa)
        + temperature_K * entropy(temperature_K, pressure_Pa);
  }

  /** Gibbs energy in J/kg at {@code temperature_K} and {@code pressure_Pa}. */
  public double gibbsEnergy(double temperature_K, double pressure_Pa) {
    double tau = tau(temperature_K);
    double sum = R1.times(energy(T1, tau)).real();
    sum += residue(pressure_Pa, 0).times(energy(T2, tau)).real();
    return polynomial(pressure_Pa, 0) - S0 * temperature_K + SCALE_TEMPERATURE * sum;
  }

  /** Entropy in J/(kg K) at {@code temperature_K} and {@code pressure_Pa}. */
  public double entropy(double temperature_K, double pressure_Pa) {
    double tau = tau(temperature_K);
    double sum = R1.times(slope(T1, tau)).real();
    sum += residue(pressure_Pa, 0).times(slope(T2, tau)).real();
    return S0 - sum;
  }

  /** Cubic thermal expansion in 1/K at {@code temperature_K} and {@code pressure_Pa}. */
  public double expansion(double temperature_K, double pressure_Pa) {
    double tau = tau(temperature_K);
    double mixed = residue(pressure_Pa, 1).times(slope(T2, tau)).real();
    return mixed * density(temperature_K, pressure_Pa);
  }

  /** Isothermal compressibility in 1/Pa at {@code temperature_K} and {@code pressure_Pa}. */
  public double compressibility(double temperature_K, double pressure_Pa) {
    double tau = tau(temperature_K);
    double second =
        polynomial(pressure_Pa, 2)
            + SCALE_TEMPERATURE * residue(pressure_Pa, 2).times(energy(T2, tau)).real();
    return -second * density(temperature_K, pressure_Pa);
  }

  private double volume(double temperature_K, double pressure_Pa) {
    double tau = tau(temperature_K);
    return polynomial(pressure_Pa, 1)
        + SCALE_TEMPERATURE * residue(pressure_Pa, 1).times(energy(T2, tau)).real();
  }

  private static double tau(double temperature_K) {
    if (!(temperature_K > 0 && temperature_K <= Water.TRIPLE_POINT_TEMPERATURE)) {
      throw new IllegalArgumentException(
          "temperature " + temperature_K + " K is outside 0 to 273.16 K, where ice is described");
    }
    return temperature_K / SCALE_TEMPERATURE;
  }

  /** The {@code order}-th derivative of g₀ by pressure. */
  private static double polynomial(double pressure_Pa, int order) {
    double sum = 0;
    for (int k = G0.length - 1; k >= order; k--) {
      sum = sum * distance(pressure_Pa) + falling(k, order) * G0[k];
    }
    return sum / Math.pow(SCALE_PRESSURE, order);
  }

  /** The {@code order}-th derivative of r₂ by pressure. */
  private static Complex residue(double pressure_Pa, int order) {
    Complex sum = new Complex(0, 0);
    for (int k = R2.length - 1; k >= order; k--) {
      sum = sum.times(distance(pressure_Pa)).plus(R2[k].times(falling(k, order)));
    }
    return sum.times(1 / Math.pow(SCALE_PRESSURE, order));
  }

  private static double distance(double pressure_Pa) {
    return (pressure_Pa - NORMAL_PRESSURE) / SCALE_PRESSURE;
  }

  /** k (k − 1) … with {@code order} factors. */
  private static double falling(int k, int order) {
    double product = 1;
    for (int factor = 0; factor < order; factor++) {
      product *= k - factor;
    }
    return product;
  }

  private static Complex energy(Complex t, double tau) {
    Complex minus = t.plus(new Complex(-tau, 0));
    Complex plus = t.plus(new Complex(tau, 0));
    return minus
        .times(minus.logarithm())
        .plus(plus.times(plus.logarithm()))
        .plus(t.times(t.logarithm()).times(-2))
        .plus(t.inverse().times(-tau * tau));
  }

  /** First derivative of {@link #energy} by τ. */
  private static Complex slope(Complex t, double tau) {
    Complex minus = t.plus(new Complex(-tau, 0));
    Complex plus = t.plus(new Complex(tau, 0));
    return plus.logarithm().plus(minus.logarithm().times(-1)).plus(t.inverse().times(-2 * tau));
  }

  /** Second derivative of {@link #energy} by τ. */
  private static Complex curvature(Complex t, double tau) {
    Complex minus = t.plus(new Complex(-tau, 0));
    Complex plus = t.plus(new Complex(tau, 0));
    return minus.inverse().plus(plus.inverse()).plus(t.inverse().times(-2));
  }

  private record Complex(double real, double imaginary) {

    Complex plus(Complex other) {
      return new Complex(real + other.real, imaginary + other.imaginary);
    }

    Complex times(Complex other) {
      return new Complex(
          real * other.real - imaginary * other.imaginary,
          real * other.imaginary + imaginary * other.real);
    }

    Complex times(double factor) {
      return new Complex(real * factor, imaginary * factor);
    }

    Complex inverse() {
      double square = real * real + imaginary * imaginary;
      return new Complex(real / square, -imaginary / square);
    }

    Complex logarithm() {
      return new Complex(Math.log(Math.hypot(real, imaginary)), Math.atan2(imaginary, real));
    }
  }
}
