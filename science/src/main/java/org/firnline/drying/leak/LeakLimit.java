package org.firnline.drying.leak;

import java.util.List;
import org.firnline.evidence.ResourceTable;
import org.firnline.evidence.Source;

/**
 * A published limit for the leak of a freeze-dryer, clean, dry and empty. Large and old machines
 * may need another one; the user's own rules come first.
 *
 * @param name what it is
 * @param rate Pa m3/s
 * @param source where it is published
 */
public record LeakLimit(String name, double rate, Source source) {

  private static final List<LeakLimit> PUBLISHED =
      ResourceTable.read(LeakLimit.class, "leak-limits.csv").stream()
          .map(row -> new LeakLimit(row.text("name"), row.number("rate_Pa_m3_per_s"), row.source()))
          .toList();

  /** The limits that ship with the program. */
  public static List<LeakLimit> published() {
    return PUBLISHED;
  }

  /**
   * The rise this limit allows, Pa/s.
   *
   * @param volume_m3 of the chamber
   */
  public double rise(double volume_m3) {
    return rate / volume_m3;
  }
}
