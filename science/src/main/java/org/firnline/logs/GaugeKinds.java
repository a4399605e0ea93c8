package org.firnline.logs;

import java.util.ArrayList;
import java.util.List;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.Series;
import org.firnline.logs.layout.ColumnUnit;
import org.firnline.logs.layout.RoleVerdict;
import org.firnline.logs.layout.ValueShape;

/**
 * Tells the kind of a pressure gauge the file does not name. A capacitance gauge spans about four
 * decades and stops at a full scale far below the atmosphere; a heat-loss gauge reads from the
 * atmosphere down, and in water vapor it reads higher than the other. A pressure that only holds
 * and ramps is a set point.
 *
 * <p>Source: common practice, no published source; the reading in vapor is discussed beside the
 * gauge ratio of the reviewer.
 */
final class GaugeKinds {
  private static final double NEAR_ATMOSPHERE_PA = 50_000;
  private static final double FINE_VACUUM_PA = 20;
  private static final int FULL_SCALE_REPEATS = 5;
  private static final double FULL_SCALE_BELOW_PA = 20_000;

  /** The verdicts with gauge kinds settled where the values tell. */
  List<RoleVerdict> settle(List<RoleVerdict> verdicts, List<ColumnSource> columns) {
    List<RoleVerdict> settled = new ArrayList<>();
    for (int i = 0; i < verdicts.size(); i++) {
      RoleVerdict verdict = verdicts.get(i);
      boolean open = verdict.role() == Role.PRESSURE && verdict.unit().isPresent();
      settled.add(open ? settle(verdict, columns.get(i)) : verdict);
    }
    return settled;
  }

  private static RoleVerdict settle(RoleVerdict verdict, ColumnSource column) {
    ColumnUnit unit = verdict.unit().orElseThrow();
    if (VacuumGauge.counts(verdict, column.cells().numbers(1, 0))) {
      return verdict;
    }
    Series series = column.cells().numbers(unit.factor(), unit.offset());
    ValueShape shape = ValueShape.of(series).orElse(new ValueShape(0, 0, 0, 0, 0, 0, false));
    if (shape.looksCommanded() && shape.stillShare() > 0.9) {
      return verdict.as(
          Role.PRESSURE_SET_POINT, Confidence.MEDIUM, "its values hold and step without noise");
    }
    double high = shape.high() * unit.factor();
    double low = shape.low() * unit.factor();
    if (high > NEAR_ATMOSPHERE_PA && low < FINE_VACUUM_PA) {
      return verdict.as(
          Role.PRESSURE_THERMAL,
          Confidence.MEDIUM,
          "it reads from the atmosphere down to fine vacuum, as only a heat-loss gauge does");
    }
    if (high < FULL_SCALE_BELOW_PA && isStopped(series, high)) {
      return verdict.as(
          Role.PRESSURE_CAPACITANCE,
          Confidence.MEDIUM,
          "it stops at a full scale far below the atmosphere, as a capacitance gauge does");
    }
    return verdict;
  }

  private static boolean isStopped(Series series, double high) {
    int repeats = 0;
    for (int i = 0; i < series.size() && repeats < FULL_SCALE_REPEATS; i++) {
      if (series.quality(i) == Quality.GOOD && series.value(i) >= high * (1 - 1e-9)) {
        repeats++;
      }
    }
    return repeats >= FULL_SCALE_REPEATS;
  }
}
