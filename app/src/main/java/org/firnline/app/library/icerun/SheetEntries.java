package org.firnline.app.library.icerun;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Problem;
import org.firnline.evidence.Provenance;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;
import org.firnline.units.QuantityKind;

/** The upper part of a sheet: texts under their keys, and what is wrong with them. */
final class SheetEntries {
  /** Stands for a value that has a problem, which is then on the list. */
  static final Estimate UNUSABLE = new Estimate(0, 0, new Provenance.Assumed("unusable"));

  private static final Entry NOTHING = new Entry("", "");

  private final Map<SheetKey, Entry> entries = new EnumMap<>(SheetKey.class);
  private final List<Problem> problems = new ArrayList<>();

  private record Entry(String text, String where) {}

  void put(SheetKey key, String text, String where) {
    entries.put(key, new Entry(text, where));
  }

  boolean has(SheetKey key) {
    return entries.containsKey(key);
  }

  String text(SheetKey key) {
    return entries.getOrDefault(key, NOTHING).text();
  }

  String where(SheetKey key) {
    return entries.getOrDefault(key, NOTHING).where();
  }

  /** A value with its standard deviation after "±" or "+-"; without one it is taken as exact. */
  Estimate estimate(SheetKey key, QuantityKind kind) {
    String[] parts = text(key).split("\\s*(?:\\+/-|\\+-|±)\\s*", 2);
    QuantityKind doubt =
        kind == QuantityKind.TEMPERATURE ? QuantityKind.TEMPERATURE_DIFFERENCE : kind;
    double best = quantity(parts[0], kind, where(key));
    double spread = parts.length == 1 ? 0 : quantity(parts[1], doubt, where(key));
    return Double.isNaN(best) || Double.isNaN(spread)
        ? UNUSABLE
        : new Estimate(best, spread, new Provenance.Stated(where(key)));
  }

  /** SI value of a text; NaN after a problem, which is then on the list. */
  double quantity(String text, QuantityKind kind, String where) {
    try {
      return Quantity.parse(text, kind).si();
    } catch (QuantityFormatException e) {
      blame(
          new Problem(
              "not-a-quantity",
              "'" + text.strip() + "'",
              where,
              String.valueOf(e.getMessage()),
              e.advice()));
      return Double.NaN;
    }
  }

  void blame(Problem problem) {
    problems.add(problem);
  }

  List<Problem> problems() {
    return problems;
  }

  boolean isUsable() {
    return problems.isEmpty();
  }
}
