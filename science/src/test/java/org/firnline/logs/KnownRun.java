package org.firnline.logs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import org.firnline.logs.channel.Role;
import org.firnline.units.Unit;

/** An invented run with known values, printed in any unit. */
final class KnownRun {
  static final int ROWS = 90;
  static final int STEP_S = 60;

  /** Its day is above 12, so that no date in it can be read two ways. */
  static final Instant START = Instant.parse("2026-10-14T06:40:00Z");

  static final List<Role> ROLES = List.of(Role.SHELF, Role.PRODUCT, Role.PRESSURE, Role.COLLECTOR);

  private KnownRun() {}

  static Instant time(int row) {
    return START.plusSeconds((long) row * STEP_S);
  }

  /** SI value of a role's channel. */
  static double si(Role role, int row) {
    double wave = Math.sin(row * 0.7) + 0.3 * Math.cos(row * 2.3);
    return switch (role) {
      case SHELF -> 273.15 - 20 + 15 * Math.sin(row / 20.0) + 0.1 * wave;
      case PRODUCT -> 273.15 - 33 + 4 * Math.sin(row / 25.0) + 0.1 * wave;
      case COLLECTOR -> 273.15 - 70 + 0.4 * wave;
      default -> row < 20 ? 101_000 * Math.exp(-row / 3.0) + 9 : 9 + 0.2 * wave;
    };
  }

  /** A value as a plain decimal in a unit, with the digits a logger would give it. */
  static BigDecimal printed(Role role, int row, Unit unit) {
    double value = (si(role, row) - unit.offset()) / unit.factor();
    boolean pressure = role == Role.PRESSURE;
    int decimals = pressure ? Math.max(0, 4 - (int) Math.floor(Math.log10(9 / unit.factor()))) : 2;
    return BigDecimal.valueOf(value).setScale(Math.min(decimals, 6), RoundingMode.HALF_UP);
  }
}
