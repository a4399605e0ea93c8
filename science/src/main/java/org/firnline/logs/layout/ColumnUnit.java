package org.firnline.logs.layout;

import java.util.Objects;
import org.firnline.units.Unit;

/**
 * The unit of a column: SI = (scale × written) in the unit.
 *
 * @param spelling the unit as the file spells it
 * @param unit the unit it means
 * @param scale what the written number is to be multiplied by first: 0.1 for tenths
 */
public record ColumnUnit(String spelling, Unit unit, double scale) {
  public ColumnUnit {
    Objects.requireNonNull(spelling, "spelling");
    Objects.requireNonNull(unit, "unit");
    if (!(scale > 0)) {
      throw new IllegalArgumentException("unit " + spelling + ": scale " + scale + " is not > 0");
    }
  }

  /** SI value = written × factor + offset. */
  public double factor() {
    return unit.factor() * scale;
  }

  /** SI value = written × factor + offset. */
  public double offset() {
    return unit.offset();
  }

  @SuppressWarnings("EqualsFloat")
  private static boolean same(Unit unit, String symbol) {
    return unit.dimension().equals(Unit.parse(symbol).dimension());
  }

  /** Whether this is a unit of pressure. */
  public boolean isPressure() {
    return same(unit, "Pa");
  }

  /** Whether this is a unit of temperature. */
  public boolean isTemperature() {
    return same(unit, "K");
  }

  /** Whether this is a unit of time. */
  public boolean isTime() {
    return same(unit, "s");
  }

  /** Whether this is a unit of mass. */
  public boolean isMass() {
    return same(unit, "kg");
  }

  /** Whether this is a unit of mass per time. */
  public boolean isMassRate() {
    return same(unit, "kg/s");
  }
}
