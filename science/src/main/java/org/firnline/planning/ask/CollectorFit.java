package org.firnline.planning.ask;

import org.firnline.planning.Verdict;

/**
 * Whether the water of a load fits the collector, in amount and in rate.
 *
 * <p>Source: mass balance. The greatest rate is taken as twice the mean, because half of the water
 * leaves in the first quarter of primary drying (an equipment maker's manual, found; only a hint at
 * the shape).
 *
 * @param count vessels; 1 or more
 * @param fillMass liquid in each, kg; positive
 * @param solids share of solids in the liquid, kg/kg; 0 to below 1
 * @param duration expected primary drying, s; positive
 * @param capacity ice the collector still holds, kg; positive
 * @param rate ice the collector takes per time, kg/s; positive, infinite if unknown
 */
public record CollectorFit(
    int count, double fillMass, double solids, double duration, double capacity, double rate) {

  private static final double PEAK_OVER_MEAN = 2;
  private static final double WATCH_SHARE = 0.8;

  public CollectorFit {
    Given.positive(count, "count", "vessels");
    Given.positive(fillMass, "fill", "kg");
    Given.that(
        solids >= 0 && solids < 1,
        "solids",
        "solids " + solids + " kg/kg",
        "must be 0 or more and below 1",
        "give for instance 5 %");
    Given.positive(duration, "drying time", "s");
    Given.positive(capacity, "collector capacity", "kg");
    Given.that(
        rate > 0,
        "collector rate",
        "collector rate " + rate + " kg/s",
        "must be above 0",
        "give for instance 2 kg/d");
  }

  /** Water in the load, kg. */
  public double water_kg() {
    return count * fillMass * (1 - solids);
  }

  /** Share of the capacity that it fills. */
  public double capacityShare() {
    return water_kg() / capacity;
  }

  /** Mean vapor rate, kg/s. */
  public double meanRate_kg_per_s() {
    return water_kg() / duration;
  }

  /** Greatest vapor rate to expect, kg/s. */
  public double peakRate_kg_per_s() {
    return PEAK_OVER_MEAN * meanRate_kg_per_s();
  }

  /** Share of the collector's rate that the greatest vapor rate takes; 0 if that is unknown. */
  public double rateShare() {
    return peakRate_kg_per_s() / rate;
  }

  /** Vessels that fit at most, both limits kept. */
  public int mostVessels() {
    double worst = Math.max(capacityShare(), rateShare());
    return (int) Math.floor(count / worst);
  }

  /** What the amount says. */
  public Verdict amountVerdict() {
    return verdict(capacityShare());
  }

  /** What the rate says. */
  public Verdict rateVerdict() {
    return verdict(rateShare());
  }

  private static Verdict verdict(double share) {
    return share > 1 ? Verdict.STOP : share > WATCH_SHARE ? Verdict.WATCH : Verdict.PASS;
  }
}
