package org.firnline.bench;

import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Capability;
import org.firnline.lab.Collector;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.Dryer;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Product;
import org.firnline.lab.Range;
import org.firnline.lab.Solution;
import org.firnline.planning.forecast.Sharing;

/** Invented loads for the benchmarks of planning. */
final class PlanningLoads {
  private static final Provenance INVENTED = new Provenance.Assumed("invented for the benchmark");

  private PlanningLoads() {}

  /** A thousand vials, three in ten at an edge, with the usual doubt, on a middling dryer. */
  static Sharing thousandVials() {
    Product product =
        new Product(
            "invented extract",
            Solution.typical(1019.5, 0.05),
            new CakeResistance(4.8e4, 4.8e7, 0),
            new Estimate(1, 0.2, INVENTED),
            new CriticalTemperature(
                CriticalTemperature.Kind.COLLAPSE, new Estimate(242.15, 1.5, INVENTED)));
    LoadItem vials = new LoadItem(product, Iso8362Vial.R10.nominal(), 3e-6, 1000, 0.3);
    Dryer dryer =
        new Dryer(
            "invented dryer",
            new Range(223.15, 313.15),
            new Range(4, 40),
            1.0 / 60,
            new Capability.Duct(Math.PI / 4 * 0.15 * 0.15, 0.8, 293),
            new Collector(20, 1e-3, 213.15));
    return new Sharing(Load.of(vials, "nobody"), dryer);
  }
}
