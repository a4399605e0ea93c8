package org.firnline.evidence;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a quantity that the program reports means.
 *
 * @param quantity its name or the key under which it is reported
 * @param meaning one sentence
 * @param formula how it comes about
 * @param unit SI unit of its value
 * @param range where it lies or holds
 * @param source where formula or meaning come from
 */
public record Explanation(
    String quantity, String meaning, String formula, String unit, String range, Source source) {

  /** Every explanation, in the order of the table. */
  public static List<Explanation> all() {
    return ResourceTable.read(Explanation.class, "explanations.csv").stream()
        .map(
            row ->
                new Explanation(
                    row.text("quantity"),
                    row.text("meaning"),
                    row.text("formula"),
                    row.text("unit"),
                    row.text("range"),
                    row.source()))
        .toList();
  }

  /** The explanation of a quantity, whatever its case. */
  public static Optional<Explanation> find(String quantity) {
    String wanted = quantity.strip().toLowerCase(Locale.ROOT);
    return all().stream()
        .filter(one -> one.quantity().toLowerCase(Locale.ROOT).equals(wanted))
        .findFirst();
  }
}
