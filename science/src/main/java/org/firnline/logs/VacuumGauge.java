package org.firnline.logs;

import org.firnline.logs.channel.Series;
import org.firnline.logs.layout.ColumnUnit;
import org.firnline.logs.layout.RoleVerdict;
import org.firnline.logs.layout.ValueShape;

/**
 * A gauge in inches of mercury that counts downward from the atmosphere: 29.9 inHg of vacuum is
 * nearly nothing left. Told by standing high most of the time, where absolute pressure would be
 * low.
 *
 * <p>Assumes an atmosphere of 101 325 Pa; its weather alone is worth several hundred pascal, so
 * such a gauge never shows an end of drying. Source: common practice, no published source.
 */
final class VacuumGauge {
  /** Half of the scale. */
  private static final double MIDDLE_INHG = 15;

  private static final double FULL_SCALE_INHG = 31;
  private static final double ATMOSPHERE_PA = 101_325;

  private VacuumGauge() {}

  /** Whether a column counts vacuum, not absolute pressure. */
  static boolean counts(RoleVerdict verdict, Series written) {
    boolean inches =
        verdict.unit().map(ColumnUnit::unit).filter(u -> u.symbol().equals("inHg")).isPresent();
    return inches
        && ValueShape.of(written)
            .filter(shape -> shape.median() > MIDDLE_INHG && shape.high() < FULL_SCALE_INHG)
            .isPresent();
  }

  /** The column as absolute pressure in Pa. */
  static Series absolute(RoleVerdict verdict, Series written) {
    return written.in(-verdict.unit().orElseThrow().factor(), ATMOSPHERE_PA);
  }
}
