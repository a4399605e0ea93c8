package org.firnline.planning.caution;

import org.firnline.lab.Dryer;
import org.firnline.lab.Hazard;
import org.firnline.matter.solvent.Solvent;
import org.firnline.matter.solvent.Solvents;
import org.firnline.planning.Figure;
import org.firnline.planning.Verdict;
import org.firnline.planning.caution.Caution.Topic;
import org.firnline.units.QuantityKind;

/**
 * The reminder that belongs to a declared hazard.
 *
 * @param owner who declared it
 * @param dryer whose collector has to catch what leaves
 * @param pressure chamber pressure, Pa
 */
record HazardCautions(String owner, Dryer dryer, double pressure) {

  /** From this risk group on a named, authorised person has to agree; common practice. */
  private static final int NEEDS_AUTHORITY = 3;

  Caution of(Hazard hazard) {
    if (hazard instanceof Hazard.Solvent solvent) {
      return solvent(solvent);
    }
    if (hazard instanceof Hazard.Biological biological) {
      boolean grave = biological.group() >= NEEDS_AUTHORITY;
      return CautionList.line(
          Topic.BIOLOGICAL,
          grave ? Verdict.STOP : Verdict.WATCH,
          owner,
          String.valueOf(biological.group()));
    }
    if (hazard instanceof Hazard.Corrosive corrosive) {
      return CautionList.line(Topic.CORROSIVE, Verdict.WATCH, owner, corrosive.name());
    }
    if (hazard instanceof Hazard.Energetic energetic) {
      return CautionList.line(Topic.ENERGETIC, Verdict.STOP, owner, energetic.name());
    }
    if (hazard instanceof Hazard.Azide) {
      return CautionList.line(Topic.AZIDE, Verdict.STOP, owner, "");
    }
    return hazard instanceof Hazard.Food
        ? CautionList.line(Topic.FOOD, Verdict.WATCH, owner, "")
        : CautionList.line(Topic.TOXIC, Verdict.WATCH, owner, "");
  }

  private Caution solvent(Hazard.Solvent declared) {
    Figure share = new Figure("share", declared.massFraction(), QuantityKind.FRACTION);
    return Solvents.find(declared.name())
        .map(known -> known(known, share))
        .orElseGet(
            () ->
                CautionList.line(
                    Topic.SOLVENT_UNKNOWN, Verdict.STOP, owner, declared.name(), share));
  }

  private Caution known(Solvent solvent, Figure share) {
    double collector = dryer.collector().temperature();
    Figure own =
        new Figure("vapor_pressure", solvent.vaporPressure(collector), QuantityKind.PRESSURE);
    Figure chamber = new Figure("pressure", pressure, QuantityKind.PRESSURE);
    Figure cold = new Figure("collector", collector, QuantityKind.TEMPERATURE);
    return switch (solvent.trappedAt(collector, pressure)) {
      case FREEZES ->
          CautionList.line(
              Topic.SOLVENT_TRAPPED,
              Verdict.WATCH,
              owner,
              solvent.name(),
              own,
              chamber,
              cold,
              share);
      case STAYS_LIQUID, PARTLY_PASSES ->
          CautionList.line(
              Topic.SOLVENT_PARTLY,
              Verdict.WATCH,
              owner,
              solvent.name(),
              own,
              chamber,
              cold,
              share);
      case PASSES ->
          CautionList.line(
              Topic.SOLVENT_PASSES, Verdict.STOP, owner, solvent.name(), own, chamber, cold, share);
    };
  }
}
