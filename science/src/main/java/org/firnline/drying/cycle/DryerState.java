package org.firnline.drying.cycle;

import java.util.List;

/**
 * Shelf, collector and gas of a dryer as they follow the schedule and suffer incidents. The chamber
 * pressure itself needs the load and is found in {@link ChamberStep}.
 */
final class DryerState {

  static final double ATMOSPHERE_PA = 101_325;

  /** Gas let in at backfill fills the chamber within this time constant, s (assumed). */
  private static final double BACKFILL_TIME_S = 120;

  /** A collector is switched on this long before the pump, s; common practice, half an hour. */
  private static final double COLLECTOR_LEAD_S = 5_400;

  private final CycleDryer dryer;
  private final CycleSchedule schedule;
  private final List<Incident> incidents;

  private double shelf;
  private double collector;
  private double gas = ATMOSPHERE_PA;

  DryerState(CycleDryer dryer, CycleSchedule schedule, List<Incident> incidents) {
    this.dryer = dryer;
    this.schedule = schedule;
    this.incidents = List.copyOf(incidents);
    this.shelf = schedule.shelf().at(0);
    this.collector = dryer.surroundings().room();
  }

  /** Moves shelf, collector and gas from {@code time_s} on by a step. */
  void advance(double time_s, double step_s) {
    double middle = time_s + step_s / 2;
    advanceShelf(middle, time_s + step_s, step_s);
    advanceCollector(middle, step_s);
    advanceGas(middle, step_s);
  }

  private void advanceShelf(double middle, double end, double step_s) {
    if (isOn(Incident.Kind.POWER_CUT, middle)) {
      double room = dryer.surroundings().room();
      shelf = relaxed(shelf, room, step_s / dryer.surroundings().shelfTime());
      return;
    }
    double wanted = setPoint(end) + size(Incident.Kind.SHELF_OVERSHOOT, middle);
    double most = dryer.shelfRamp() * step_s;
    shelf += Math.max(-most, Math.min(most, wanted - shelf));
  }

  private void advanceCollector(double middle, double step_s) {
    boolean cold =
        middle > schedule.evacuation() - COLLECTOR_LEAD_S
            && middle < schedule.backfill()
            && !isOn(Incident.Kind.POWER_CUT, middle)
            && !isOn(Incident.Kind.COLLECTOR_STOP, middle);
    double goal = cold ? dryer.collector() : dryer.surroundings().room();
    double time = dryer.surroundings().collectorTime() / (cold ? 4 : 1);
    collector = relaxed(collector, goal, step_s / time);
  }

  private void advanceGas(double middle, double step_s) {
    if (middle >= schedule.backfill()) {
      gas = relaxed(gas, ATMOSPHERE_PA, step_s / BACKFILL_TIME_S);
      return;
    }
    double inflow = inflow(middle);
    if (isPumping(middle)) {
      double rest = inflow / dryer.pumpingSpeed();
      gas = relaxed(gas, rest, step_s * dryer.pumpingSpeed() / dryer.volume());
    } else {
      gas += inflow * step_s / dryer.volume();
    }
    gas = Math.min(ATMOSPHERE_PA, gas);
  }

  /** Exponential approach; a value that has arrived stays. */
  private static double relaxed(double value, double goal, double timeConstants) {
    double gap = value - goal;
    return Math.abs(gap) < 1e-9 * Math.abs(goal) ? goal : goal + gap * Math.exp(-timeConstants);
  }

  double setPoint(double time_s) {
    return schedule.shelf().at(time_s);
  }

  /** Air coming in besides bleed gas, Pa m3/s. */
  double inflow(double time_s) {
    return dryer.leak()
        + size(Incident.Kind.LEAK, time_s)
        + size(Incident.Kind.PORT_OPENED, time_s);
  }

  boolean isPumping(double time_s) {
    return time_s >= schedule.evacuation()
        && time_s < schedule.backfill()
        && !isOn(Incident.Kind.POWER_CUT, time_s)
        && !isOn(Incident.Kind.PUMP_STOP, time_s);
  }

  /** Whether the pressure control can bleed gas in to hold its set point. */
  boolean isControlled(double time_s) {
    return time_s >= schedule.evacuation()
        && time_s < schedule.backfill()
        && dryer.control() == CycleDryer.Control.HOLDS_SET_POINT
        && !isOn(Incident.Kind.POWER_CUT, time_s);
  }

  double pressureSetPoint(double time_s) {
    return schedule.pressure().at(time_s);
  }

  double shelf() {
    return shelf;
  }

  double collector() {
    return collector;
  }

  /** Partial pressure that permanent gas alone would give, Pa. */
  double gas() {
    return gas;
  }

  /** Whether anything is wrong or has just been, so that short steps are due. */
  boolean isDisturbed(double time_s, double margin_s) {
    for (Incident incident : incidents) {
      if (time_s >= incident.start() - margin_s && time_s < incident.end() + margin_s) {
        return true;
      }
    }
    return false;
  }

  private boolean isOn(Incident.Kind kind, double time_s) {
    for (Incident incident : incidents) {
      if (incident.kind() == kind && incident.isOn(time_s)) {
        return true;
      }
    }
    return false;
  }

  private double size(Incident.Kind kind, double time_s) {
    double size = 0;
    for (Incident incident : incidents) {
      if (incident.kind() == kind && incident.isOn(time_s)) {
        size += incident.size();
      }
    }
    return size;
  }
}
