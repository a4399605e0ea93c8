package org.firnline.review.simulated;

import java.util.List;
import java.util.Set;
import org.firnline.drying.cycle.CycleRun;
import org.firnline.drying.cycle.Incident;
import org.firnline.drying.cycle.LoggedChannel;
import org.firnline.drying.cycle.SensorFailure;
import org.firnline.review.FindingKind;

/** Something that goes wrong in a simulated run, and the finding it must lead to. */
enum IncidentDraw {
  POWER_CUT(Set.of(FindingKind.POWER_CUT)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.with(run -> List.of(incident(Incident.Kind.POWER_CUT, run, chance, 2_400, 0)));
    }
  },
  PUMP_STOP(Set.of(FindingKind.VACUUM_LOST, FindingKind.VACUUM_LEAK, FindingKind.PRESSURE_FLOATS)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.leaking(0.02)
          .with(run -> List.of(incident(Incident.Kind.PUMP_STOP, run, chance, 1_800, 0)));
    }
  },
  COLLECTOR_STOP(Set.of(FindingKind.COLLECTOR_WARMING)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.with(
          run -> List.of(incident(Incident.Kind.COLLECTOR_STOP, run, chance, 3_600, 0)));
    }
  },
  LEAK(Set.of(FindingKind.VACUUM_LEAK)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.with(run -> List.of(incident(Incident.Kind.LEAK, run, chance, 10_800, 0.12)));
    }
  },
  SHORT_LEAK(Set.of(FindingKind.VACUUM_LEAK)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.every(30)
          .with(run -> List.of(incident(Incident.Kind.LEAK, run, chance, 400, 0.2)));
    }
  },
  LEAK_FROM_THE_START(Set.of(FindingKind.VACUUM_LEAK)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.leaking(0.12);
    }
  },
  PORT_OPENED(Set.of(FindingKind.PORT_OPENED)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.every(30)
          .with(run -> List.of(incident(Incident.Kind.PORT_OPENED, run, chance, 60, 8)));
    }
  },
  SHELF_OVERSHOOT(Set.of(FindingKind.SHELF_OVERSHOOT)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.with(
          run -> List.of(incident(Incident.Kind.SHELF_OVERSHOOT, run, chance, 5_400, 8)));
    }
  },
  SENSOR_OPEN(Set.of(FindingKind.SENSOR_DEAD)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.failing(run -> List.of(failure(run, SensorFailure.Way.OPEN)));
    }
  },
  SENSOR_STUCK(Set.of(FindingKind.SENSOR_DEAD)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.failing(run -> List.of(failure(run, SensorFailure.Way.STUCK)));
    }
  },
  HEAT_TOO_EARLY(Set.of(FindingKind.SECONDARY_BEFORE_END)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.soak(chance.uniform("early", -0.25, -0.12));
    }
  },
  OVERLOAD(Set.of(FindingKind.PRESSURE_FLOATS)) {
    @Override
    RunDraw in(RunDraw draw, Chance chance) {
      return draw.timesLoad(14);
    }
  };

  private final Set<FindingKind> expected;

  IncidentDraw(Set<FindingKind> expected) {
    this.expected = expected;
  }

  abstract RunDraw in(RunDraw draw, Chance chance);

  /** Any of these tells what happened. */
  Set<FindingKind> expected() {
    return expected;
  }

  /** At 20 to 60 % of primary drying. */
  private static Incident incident(
      Incident.Kind kind, CycleRun run, Chance chance, double length_s, double size) {
    double start = at(run, chance.uniform("when", 0.2, 0.6));
    return new Incident(kind, start, start + length_s * chance.uniform("long", 1, 1.4), size);
  }

  private static double at(CycleRun run, double share) {
    return run.vacuumReached() + share * (run.lastEndOfIce() - run.vacuumReached());
  }

  private static SensorFailure failure(CycleRun run, SensorFailure.Way way) {
    return new SensorFailure(
        LoggedChannel.Kind.PRODUCT, 0, way, at(run, 0.3), Double.POSITIVE_INFINITY);
  }
}
