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
  private final SublimationStep sublimation;
  private final ChamberStep chamber;
  private final int[] watched;
  private final List<CycleMoment> moments = new ArrayList<>();
  private final double iceAtStart;

  private double vacuumReached = Double.POSITIVE_INFINITY;
  private double pressureOfColdest = Double.NaN;
  private double coldest;
  private double vaporOfIce;
  private double heatError;
  private double heatSublimed;

  CycleMarch(CycleSimulation cycle, int... watched) {
    this.cycle = cycle;
    this.watched = watched;
    this.all = new VesselArrays(cycle.vessels(), cycle.schedule().shelf().at(0));
    this.dryer = new DryerState(cycle.dryer(), cycle.schedule(), cycle.incidents());
    this.sublimation = new SublimationStep(all);
    this.chamber = new ChamberStep(cycle.dryer(), dryer);
    this.iceAtStart = ice(0);
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
    double start = chamber.lowest(end);
    double shift = 0;
    if (start < Water.TRIPLE_POINT_PRESSURE) {
      shift = meet(start, step_s, end);
    } else {
      chamber.takeOver(start);
    }
    double total = 0;
    for (int i = 0; i < all.size; i++) {
      advanceVessel(i, time_s, step_s, shelf, shift);
      total += all.count[i] * all.rate[i];
    }
    if (end > cycle.schedule().evacuation()
        && chamber.pressure() <= 1.05 * Math.max(dryer.pressureSetPoint(end), chamber.carried())) {
      vacuumReached = Math.min(vacuumReached, end);
    }
    return total;
  }

  /** Looks at every subliming vessel and finds the pressure at which load and dryer meet. */
  private double meet(double pressure_Pa, double step_s, double end) {
    double coldest = coldest(pressure_Pa);
    double rate = 0;
    double slope = 0;
    for (int i = 0; i < all.size; i++) {
      if (all.stage[i] == VesselArrays.FROZEN) {
        sublimation.look(i, pressure_Pa, coldest, step_s);
        rate += all.count[i] * all.rate[i];
        slope += all.count[i] * sublimation.perPascal(i);
      }
    }
    return chamber.meet(pressure_Pa, rate, slope, end) - pressure_Pa;
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
    double source = all.source(i, shelf, pressure);
    byte stage = all.stage[i];
    if (stage == VesselArrays.FROZEN) {
      double before = all.depth[i];
      if (pressure >= Water.TRIPLE_POINT_PRESSURE) {
        sublimation.look(i, pressure, Double.POSITIVE_INFINITY, step_s);
      }
      double conductance = all.outerConductance(i, pressure);
      double error = sublimation.advance(i, time_s, step_s, source, conductance, shift);
      double gone = (all.depth[i] - before) * all.icePerDepth(i) * all.count[i];
      vaporOfIce += gone;
      heatError += Math.abs(error) * all.count[i];
      heatSublimed += gone * SUBLIMATION_HEAT;
    } else if (stage == VesselArrays.DRY) {
      DesorptionStep.advance(all, i, step_s, source, all.outerConductance(i, pressure));
    } else {
      FreezingStep.advance(all, i, time_s, step_s, source, pressure);
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

  private double ice(int from) {
    double ice = 0;
    for (int i = from; i < all.size; i++) {
      ice += all.count[i] * (all.thickness[i] - all.depth[i]) * all.icePerDepth(i);
    }
    return ice;
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
    return Math.abs(iceAtStart - ice(0) - vaporOfIce) / iceAtStart;
  }

  double energyError() {
    return heatSublimed == 0 ? 0 : heatError / heatSublimed;
  }
}
