package org.firnline.planning.design;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.Capability;
import org.firnline.lab.Collector;
import org.firnline.lab.CriticalTemperature;
import org.firnline.lab.Dryer;
import org.firnline.lab.Flask;
import org.firnline.lab.HeatFromAbove;
import org.firnline.lab.Iso8362Vial;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Piece;
import org.firnline.lab.Portion;
import org.firnline.lab.Product;
import org.firnline.lab.Range;
import org.firnline.lab.Solution;
import org.firnline.lab.Tray;
import org.firnline.lab.Vessel;
import org.firnline.lab.Vial;
import org.firnline.planning.VesselVariation;
import org.firnline.planning.forecast.Sharing;

/** Invented loads and dryers for the tests of planning. */
public final class DesignExamples {

  public static final Provenance INVENTED = new Provenance.Assumed("invented for this test");
  public static final VesselVariation ALIKE = new VesselVariation(0, 0, 0, 1);

  private DesignExamples() {}

  public static Estimate estimate(double best, double spread) {
    return new Estimate(best, spread, INVENTED);
  }

  /** A 5 % solution whose cake grows steeply; spreads as given. */
  public static Product product(
      String name, double critical_K, double criticalSpread_K, double cakeSpread) {
    return new Product(
        name,
        Solution.typical(1019.5, 0.05),
        new CakeResistance(4.8e4, 4.8e7, 0),
        estimate(1, cakeSpread),
        new CriticalTemperature(
            CriticalTemperature.Kind.COLLAPSE, estimate(critical_K, criticalSpread_K)));
  }

  public static Vial vial(double heatSpread) {
    return Iso8362Vial.R10.withHeatTransfer(
        Iso8362Vial.TYPICAL_HEAT_TRANSFER, estimate(1, heatSpread));
  }

  /** Vials with the usual doubt. */
  public static LoadItem vials(int count) {
    return new LoadItem(
        product("invented extract", 242.15, 1.5, 0.2), vial(0.15), 3e-6, count, 0.3);
  }

  /** Vials of which everything is known. */
  public static LoadItem knownVials(int count) {
    return new LoadItem(product("known extract", 242.15, 0, 0), vial(0), 5e-6, count, 0);
  }

  public static LoadItem of(Vessel vessel, double fill, int count) {
    return new LoadItem(product("invented extract", 243.15, 1.5, 0.2), vessel, fill, count, 0);
  }

  public static Tray tray() {
    return new Tray(
        "invented tray",
        0.4,
        0.3,
        0.025,
        Vial.UNEVEN_BOTTOM,
        estimate(1, 0.2),
        Optional.of(new HeatFromAbove(estimate(5, 1), 0.04)));
  }

  public static Piece piece() {
    return new Piece("invented slice", 0.01, 0.002, new HeatFromAbove(estimate(5, 1), 0.04));
  }

  public static Flask flask(Flask.Form form) {
    return new Flask(
        "invented flask",
        1.2e-3,
        form,
        0.0025,
        Flask.BOROSILICATE_CONDUCTIVITY,
        Flask.TYPICAL_ROOM_HEAT_TRANSFER,
        estimate(1e5, 5e4));
  }

  public static Capability duct() {
    return new Capability.Duct(Math.PI / 4 * 0.08 * 0.08, 0.8, 293);
  }

  public static Dryer dryer() {
    return new Dryer(
        "invented dryer",
        new Range(223.15, 313.15),
        new Range(4, 40),
        1.0 / 60,
        duct(),
        new Collector(8, 1e-3, 213.15));
  }

  public static Dryer manifold() {
    return Dryer.inRoomAir("invented manifold", duct(), new Collector(4, 1e-4, 218.15));
  }

  public static Load load(LoadItem item) {
    return Load.of(item, "Wren");
  }

  public static Load together(LoadItem first, LoadItem second) {
    return new Load(
        List.of(new Portion(first, "Wren", List.of()), new Portion(second, "Finch", List.of())));
  }

  public static Sharing sharing(LoadItem item) {
    return new Sharing(load(item), dryer());
  }

  public static Sharing exact(LoadItem item) {
    return new Sharing(load(item), dryer(), ALIKE, Sharing.USUAL_ROOM_K);
  }
}
