package org.firnline.drying.freezing;

import org.firnline.numerics.Root;

/**
 * Where a vessel stands: closed forms carry it along while the shelf changes at a steady rate.
 *
 * @param stage what is going on
 * @param temperature mean of the product, K; meaningless while freezing
 * @param driven ∫ (T_f − T_shelf) dt since nucleation, K s; while freezing
 * @param atOnce share of the ice that formed at nucleation, 0 to 1
 */
record FreezingState(FreezingMoment.Stage stage, double temperature, double driven, double atOnce) {

  private static final int MOST_STEPS = 30;

  private static final double SETTLED = 1e-14;

  static FreezingState liquid(double temperature_K) {
    return new FreezingState(FreezingMoment.Stage.LIQUID, temperature_K, 0, 0);
  }

  /** A shelf at {@code start} K that changes by {@code slope} K/s. */
  record Shelf(double start, double slope) {

    double at(double time_s) {
      return start + slope * time_s;
    }
  }

  /** How far a state got within a span, and the state there. */
  record Step(double time, FreezingState state) {}

  /** The state after {@code span_s}, or at the end of its stage if that comes first. */
  Step advanced(FreezingVessel vessel, double nucleation_K, Shelf shelf, double span_s) {
    return switch (stage) {
      case LIQUID -> cooled(vessel, nucleation_K, shelf, span_s);
      case FREEZING -> froze(vessel, shelf, span_s);
      case FROZEN -> new Step(span_s, frozenAfter(vessel, shelf, span_s));
    };
  }

  FreezingMoment moment(FreezingVessel vessel, double time_s, double shelf_K) {
    return switch (stage) {
      case LIQUID -> new FreezingMoment(time_s, shelf_K, temperature, temperature, 0, stage);
      case FREEZING -> freezingMoment(vessel, time_s, shelf_K);
      case FROZEN -> frozenMoment(vessel, time_s, shelf_K);
    };
  }

  private FreezingMoment freezingMoment(FreezingVessel vessel, double time_s, double shelf_K) {
    double contact = vessel.contactResistance();
    double share = frontShare(vessel);
    double layer = vessel.layerShare(share) * vessel.layerResistance();
    double heat = (vessel.freezingPoint() - shelf_K) / (contact + layer);
    return new FreezingMoment(
        time_s,
        shelf_K,
        shelf_K + heat * contact,
        vessel.freezingPoint(),
        atOnce + (1 - atOnce) * share,
        stage);
  }

  /** Mean to bottom is a third, mean to top a sixth of the layer's resistance. */
  private FreezingMoment frozenMoment(FreezingVessel vessel, double time_s, double shelf_K) {
    double contact = vessel.contactResistance();
    double layer = vessel.layerResistance();
    double heat = (temperature - shelf_K) / (contact + layer / 3);
    return new FreezingMoment(
        time_s, shelf_K, shelf_K + heat * contact, temperature + heat * layer / 6, 1, stage);
  }

  private Step cooled(FreezingVessel vessel, double nucleation_K, Shelf shelf, double span_s) {
    double lag = vessel.liquidHeat() * vessel.contactResistance();
    double after = following(shelf, lag, span_s);
    if (temperature > nucleation_K && after > nucleation_K) {
      return new Step(span_s, liquid(after));
    }
    double time =
        temperature <= nucleation_K
            ? 0
            : Root.find(t -> following(shelf, lag, t) - nucleation_K, 0, span_s);
    double cold = Math.min(temperature, nucleation_K);
    double released = vessel.liquidHeat() * (vessel.freezingPoint() - cold) / vessel.latentHeat();
    if (released >= 1) {
      double warmed = cold + vessel.latentHeat() / vessel.liquidHeat();
      return new Step(time, new FreezingState(FreezingMoment.Stage.FROZEN, warmed, 0, 1));
    }
    return new Step(
        time,
        new FreezingState(
            FreezingMoment.Stage.FREEZING, vessel.freezingPoint(), 0, Math.max(0, released)));
  }

  private Step froze(FreezingVessel vessel, Shelf shelf, double span_s) {
    double needed =
        remainingHeat(vessel)
            * (vessel.contactResistance() + vessel.layerResistance() * vessel.layerIntegral(1));
    double after = drivenAfter(vessel, shelf, span_s);
    if (after < needed) {
      return new Step(span_s, new FreezingState(stage, temperature, Math.max(0, after), atOnce));
    }
    double time = Root.find(t -> drivenAfter(vessel, shelf, t) - needed, 0, span_s);
    double contact = vessel.contactResistance();
    double bottom =
        shelf.at(time)
            + (vessel.freezingPoint() - shelf.at(time))
                * contact
                / (contact + vessel.layerResistance());
    double mean = (vessel.freezingPoint() + bottom) / 2;
    return new Step(time, new FreezingState(FreezingMoment.Stage.FROZEN, mean, 0, 1));
  }

  private FreezingState frozenAfter(FreezingVessel vessel, Shelf shelf, double span_s) {
    double lag = vessel.frozenHeat() * (vessel.contactResistance() + vessel.layerResistance() / 3);
    double after = following(shelf, lag, span_s);
    if (after > vessel.freezingPoint()) {
      throw new IllegalArgumentException(
          "the shelf melts the frozen product again, which this model does not follow");
    }
    return new FreezingState(stage, after, 0, 1);
  }

  /** A mass that lags behind a ramp by {@code lag} s. */
  private double following(Shelf shelf, double lag, double time_s) {
    double behind = shelf.slope() * lag;
    return shelf.at(time_s)
        - behind
        + (temperature - shelf.start() + behind) * Math.exp(-time_s / lag);
  }

  private double drivenAfter(FreezingVessel vessel, Shelf shelf, double time_s) {
    double drive = vessel.freezingPoint() - shelf.start();
    return driven + time_s * (drive - shelf.slope() * time_s / 2);
  }

  /**
   * Share of the way of the front, from driven = heat (ξ R_contact + R_layer ∫ share dξ): a
   * quadratic in a flat layer; in a shell Newton's rule comes down to it from there or from 1.
   */
  private double frontShare(FreezingVessel vessel) {
    double contact = vessel.contactResistance();
    double layer = vessel.layerResistance();
    double scaled = driven / remainingHeat(vessel);
    double flat = 2 * scaled / (contact + Math.sqrt(contact * contact + 2 * layer * scaled));
    if (vessel.curvature() == 0) {
      return flat;
    }
    double share = 1;
    for (int step = 0; step < MOST_STEPS; step++) {
      double excess = share * contact + layer * vessel.layerIntegral(share) - scaled;
      double moved = excess / (contact + layer * vessel.layerShare(share));
      share = Math.max(0, share - moved);
      if (Math.abs(moved) < SETTLED) {
        break;
      }
    }
    return share;
  }

  private double remainingHeat(FreezingVessel vessel) {
    return (1 - atOnce) * vessel.latentHeat();
  }
}
