package org.firnline.drying.cycle;

import java.util.ArrayList;
import java.util.List;
import org.firnline.drying.primary.FastFront;
import org.firnline.matter.Water;

/** One walk through a cycle: keeps the state, advances it, writes down what happens. */
final class CycleMarch {

  /** Steps while the chamber empties, s. */
  private static final double SHORT_STEP_S = 10;

  /** Time after the pump starts, or around an incident, during which steps are short, s. */
  private static final double SETTLING_S = 900;

  private final CycleSimulation cycle;
  private final VesselArrays all;
  private final DryerState dryer;
  private final FreezingStep freezing;
  private final SublimationStep sublimation;
  private final DesorptionStep desorption;
  private final ChamberStep chamber;
  private final int[] watched;
  private final List<CycleMoment> moments = new ArrayList<>();
  private final double iceAtStart;

  private double vacuumReached = Double.POSITIVE_INFINITY;
  private double pressureOfColdest = Double.NaN;
  private double coldest;
  private double vaporOfIce;
  private double collected;
  private double fullAt = Double.POSITIVE_INFINITY;
  private boolean pumped;
  private double heatError;
  private double heatSublimed;

  CycleMarch(CycleSimulation cycle, int... watched) {
    this.cycle = cycle;
    this.watched = watched;
    this.all = new VesselArrays(cycle.vessels(), cycle.schedule().shelf().at(0));
    this.dryer = new DryerState(cycle.dryer(), cycle.schedule(), cycle.incidents());
    this.freezing = new FreezingStep(all);
    this.sublimation = new SublimationStep(all);
    this.desorption = new DesorptionStep(all);
    this.chamber = new ChamberStep(cycle.dryer(), dryer);
    this.iceAtStart = ice();
  }

  void run() {
    double[] bends = cycle.bends();
    int next = 0;
    double time = 0;
    note(time, 0);
    while (time < cycle.schedule().end()) {
      while (next < bends.length && bends[next] <= time) {
        next++;
      }
      double until = next < bends.length ? bends[next] : cycle.schedule().end();
      double step = Math.min(wantedStep(time), until - time);
      double rate = advance(time, step);
      time = step == until - time ? until : time + step;
      note(time, rate);
    }
  }

  private double wantedStep(double time_s) {
    double sincePump = time_s - cycle.schedule().evacuation();
    boolean settling =
        (sincePump >= 0 && sincePump < SETTLING_S)
            || time_s >= cycle.schedule().backfill()
            || dryer.isDisturbed(time_s, SETTLING_S);
    return Math.min(cycle.longestStep(), settling ? SHORT_STEP_S : cycle.longestStep());
  }

  /** One step of everything; gives the mean vapor rate of the load, kg/s. */
  private double advance(double time_s, double step_s) {
    double shelfBefore = dryer.shelf();
    dryer.advance(time_s, step_s);
    double shelf = (shelfBefore + dryer.shelf()) / 2;
    double end = time_s + step_s;
    double middle = time_s + step_s / 2;
    underVacuum(time_s);
    double lowest = chamber.lowest(end, collected > 0);
    double shift = 0;
    if (lowest < Water.TRIPLE_POINT_PRESSURE) {
      double from = chamber.from(lowest);
      shift = meet(lowest, from, middle, step_s, shelf) - from;
    } else {
      chamber.takeOver(lowest);
    }
    double total = 0;
    for (int i = 0; i < all.size; i++) {
      if (all.isOn(i, middle)) {
        if (all.stage[i] < VesselArrays.FROZEN) {
          freezing.advance(i, time_s, step_s, shelfBefore, dryer.shelf(), chamber.pressure());
        } else {
          advanceVessel(i, time_s, step_s, shelf, shift);
        }
        total += all.count[i] * all.rate[i];
      }
    }
    collect(total * step_s, end);
    if (end > cycle.schedule().evacuation()
        && chamber.pressure() <= 1.05 * Math.max(dryer.pressureSetPoint(end), chamber.carried())) {
      vacuumReached = Math.min(vacuumReached, end);
    }
    return total;
  }

  /** Looks at every subliming vessel and finds the pressure at which load and dryer meet. */
  private double meet(double lowest, double from, double middle, double step_s, double shelf) {
    double cold = coldest(from);
    double rate = 0;
    double slope = 0;
    for (int i = 0; i < all.size; i++) {
      if (all.stage[i] == VesselArrays.FROZEN && all.isOn(i, middle)) {
        sublimation.look(i, from, cold, step_s, shelf);
        rate += all.count[i] * all.rate[i];
        slope += all.count[i] * sublimation.perPascal(i);
      }
    }
    return chamber.meet(lowest, from, rate, slope);
  }

  /** Saturation temperature, kept while the pressure stays, as it does for most of a cycle. */
  private double coldest(double pressure_Pa) {
    if (pressure_Pa != pressureOfColdest) {
      pressureOfColdest = pressure_Pa;
      coldest = FastFront.coldest(Math.max(pressure_Pa, ChamberStep.LEAST_PA));
    }
    return coldest;
  }

  private void advanceVessel(int i, double time_s, double step_s, double shelf, double shift) {
    double pressure = chamber.pressure();
    byte stage = all.stage[i];
    if (stage == VesselArrays.FROZEN) {
      double before = all.iceLeft(i);
      if (pressure >= Water.TRIPLE_POINT_PRESSURE) {
        sublimation.look(i, pressure, Double.POSITIVE_INFINITY, step_s, shelf);
      }
      double outer = all.heat.outer(i, pressure);
      double source = all.heat.source(i, shelf, pressure);
      double error = sublimation.advance(i, time_s, step_s, source, outer, shift);
      vaporOfIce += all.count[i] * all.rate[i] * step_s;
      heatError += Math.abs(error) * all.count[i];
      heatSublimed += (before - all.iceLeft(i)) * SUBLIMATION_HEAT;
      anneal(i, time_s, step_s);
    } else if (stage == VesselArrays.DRY) {
      desorption.advance(i, time_s, step_s, shelf, pressure);
    }
  }

  /** Frozen hours above a temperature count until the pump starts. */
  private void anneal(int i, double time_s, double step_s) {
    if (time_s < cycle.schedule().evacuation() && all.vessels[i].annealing().isPresent()) {
      boolean soft = all.bottom[i] >= all.vessels[i].annealing().get().above();
      all.annealed[i] += soft ? step_s : 0;
    }
  }

  /** When the pump starts, what annealing did to the cakes is done. */
  private void underVacuum(double time_s) {
    if (pumped || time_s < cycle.schedule().evacuation()) {
      return;
    }
    pumped = true;
    for (int i = 0; i < all.size; i++) {
      if (all.vessels[i].annealing().isPresent()) {
        Annealing how = all.vessels[i].annealing().get();
        all.cake[i] = all.cake[i].times(how.resistanceAfter(all.annealed[i]));
      }
    }
  }

  private void collect(double vapor_kg, double time_s) {
    collected += vapor_kg;
    if (collected >= cycle.dryer().capacity()) {
      fullAt = Math.min(fullAt, time_s);
    }
  }

  /** Scale for the energy error only, J/kg. */
  private static final double SUBLIMATION_HEAT = 2.84e6;

  private void note(double time, double rate) {
    Double[] products = new Double[watched.length];
    for (int i = 0; i < watched.length; i++) {
      products[i] = all.bottom[watched[i]];
    }
    moments.add(
        new CycleMoment(
            time,
            dryer.setPoint(time),
            dryer.shelf(),
            chamber.pressure(),
            chamber.vaporShare(rate, time),
            dryer.collector(),
            rate,
            List.of(products)));
  }

  private double ice() {
    double ice = 0;
    for (int i = 0; i < all.size; i++) {
      ice += all.iceLeft(i);
    }
    return ice;
  }

  CollectorTally collector() {
    return new CollectorTally(collected, fullAt);
  }

  List<CycleMoment> moments() {
    return moments;
  }

  VesselArrays vessels() {
    return all;
  }

  double vacuumReached() {
    return vacuumReached;
  }

  double massError() {
    return Math.abs(iceAtStart - ice() - vaporOfIce) / iceAtStart;
  }

  double energyError() {
    return heatSublimed == 0 ? 0 : heatError / heatSublimed;
  }
}
