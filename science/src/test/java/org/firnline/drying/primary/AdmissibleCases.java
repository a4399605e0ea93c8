package org.firnline.drying.primary;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.PhaseDensities;
import org.firnline.lab.Solution;

/** Random vessels, sources and pressures over the whole range that people use, and beyond. */
final class AdmissibleCases {

  /** A vessel with its source and chamber pressure. */
  record Case(DryingVessel vessel, HeatSupply supply, double pressure_Pa) {}

  /** Sources closer to the threshold amplify the error of any table without bound. */
  static final double LEAST_DRIVE_K = 0.5;

  private static final int STEPS = 1_000_000;

  private AdmissibleCases() {}

  static Arbitrary<Case> slabs() {
    return Combinators.combine(slabGeometry(), cakes(), mouths(), supplies(), pressures())
        .as(
            (slab, cake, mouth, supply, p) ->
                new Case(new DryingVessel(slab, cake, mouth), supply, p))
        .filter(AdmissibleCases::sublimes);
  }

  static Arbitrary<Case> shells() {
    return Combinators.combine(shellGeometry(), cakes(), mouths(), supplies(), pressures())
        .as(
            (shell, cake, mouth, supply, p) ->
                new Case(new DryingVessel(shell, cake, mouth), supply, p))
        .filter(AdmissibleCases::sublimes);
  }

  static Arbitrary<Case> slabsWithHeatFromAbove() {
    Arbitrary<HeatSupply.Above> above =
        Combinators.combine(between(1, 12), between(0.02, 0.2), between(250, 330))
            .as(HeatSupply.Above::new);
    return Combinators.combine(slabs(), above)
        .as((c, a) -> new Case(c.vessel(), c.supply().withAbove(a), c.pressure_Pa()))
        .filter(AdmissibleCases::sublimes);
  }

  private static boolean sublimes(Case c) {
    var front = new QuasiSteadyFront();
    double coldest = front.coldest(c.pressure_Pa()) + LEAST_DRIVE_K;
    double end = c.vessel().geometry().thickness();
    return front.effectiveSource(c.vessel(), c.supply(), 0) > coldest
        && front.effectiveSource(c.vessel(), c.supply(), end) > coldest;
  }

  private static Arbitrary<Slab> slabGeometry() {
    return Combinators.combine(
            between(0.0005, 0.03),
            logarithmic(1e-5, 0.3),
            between(1, 1.4),
            between(0.5, 0.98),
            between(0.5, 3))
        .as(
            (depth, area, flare, iceShare, conductivity) ->
                new Slab(917 * iceShare * depth * area, depth, area, area * flare, conductivity));
  }

  private static Arbitrary<Shell> shellGeometry() {
    return Combinators.combine(
            between(0.02, 0.12), between(0.05, 0.3), between(0.02, 0.7), between(0.02, 0.3))
        .as(
            (radius, height, share, solids) ->
                Shell.of(
                    new Solution(1020, solids, 0.1, PhaseDensities.TYPICAL, 2.3),
                    share * Math.PI * radius * radius * height * 0.9,
                    radius,
                    height,
                    new Shell.Glass(0.003, 1.1)));
  }

  private static Arbitrary<CakeResistance> cakes() {
    return Combinators.combine(
            Arbitraries.oneOf(Arbitraries.just(0.0), logarithmic(1e3, 5e5)),
            Arbitraries.oneOf(Arbitraries.just(0.0), logarithmic(1e6, 5e8)),
            Arbitraries.oneOf(Arbitraries.just(0.0), logarithmic(1, 1000)))
        .as(CakeResistance::new);
  }

  private static Arbitrary<Double> mouths() {
    return Arbitraries.oneOf(Arbitraries.just(0.0), logarithmic(1e3, 1e8));
  }

  private static Arbitrary<HeatSupply> supplies() {
    return Combinators.combine(logarithmic(2, 200), between(215, 320))
        .as((coefficient, kelvin) -> new HeatSupply(coefficient, kelvin, HeatSupply.Above.NONE));
  }

  private static Arbitrary<Double> pressures() {
    return logarithmic(0.5, 200);
  }

  static Arbitrary<Double> logarithmic(double low, double high) {
    return between(Math.log(low), Math.log(high)).map(Math::exp);
  }

  /** Evenly spread over both limits and all between. */
  private static Arbitrary<Double> between(double low, double high) {
    return Arbitraries.integers().between(0, STEPS).map(i -> low + (high - low) * i / STEPS);
  }
}
