package org.firnline.app.planfile;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.firnline.app.planfile.PlanSection.Entry;
import org.firnline.evidence.Estimate;
import org.firnline.lab.Range;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;
import org.firnline.units.QuantityKind;

/** Turns the texts of one section into quantities, collecting what is wrong. */
final class PlanValues {
  private static final Pattern PLUS_MINUS = Pattern.compile("\\s*(?:\\+/-|\\+-|±)\\s*");
  private static final Pattern TO = Pattern.compile("\\s+(?:to|bis|…|\\.\\.)\\s+");
  private static final double LARGEST_COUNT = 1e6;
  private static final List<String> YES = List.of("yes", "true");
  private static final List<String> NO = List.of("no", "false");

  private final PlanSection section;

  PlanValues(PlanSection section) {
    this.section = section;
  }

  /** SI value of a key; NaN after a problem, which is then on the list. */
  double number(String key, QuantityKind kind) {
    return section.entry(key).map(entry -> quantity(entry, entry.text(), kind)).orElse(Double.NaN);
  }

  OptionalDouble optionalNumber(String key, QuantityKind kind) {
    Optional<Entry> entry = section.optionalEntry(key);
    if (entry.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(quantity(entry.get(), entry.get().text(), kind));
  }

  String text(String key) {
    return section.entry(key).map(Entry::text).orElse("");
  }

  /** A value with its doubt, "-31 °C +- 2 K"; without one the value is taken as exact. */
  Optional<Estimate> temperature(String key) {
    return section
        .entry(key)
        .flatMap(
            entry -> {
              String[] parts = PLUS_MINUS.split(entry.text(), 2);
              double best = quantity(entry, parts[0], QuantityKind.TEMPERATURE);
              double spread =
                  parts.length == 1
                      ? 0
                      : quantity(entry, parts[1], QuantityKind.TEMPERATURE_DIFFERENCE);
              if (Double.isNaN(best) || Double.isNaN(spread)) {
                return Optional.empty();
              }
              return Optional.of(new Estimate(best, spread, entry.provenance()));
            });
  }

  /** A value with its doubt, in the same unit or in percent of it. */
  Optional<Estimate> estimate(String key, QuantityKind kind) {
    return section.entry(key).flatMap(entry -> estimate(entry, kind));
  }

  private Optional<Estimate> estimate(Entry entry, QuantityKind kind) {
    String[] parts = PLUS_MINUS.split(entry.text(), 2);
    double best = quantity(entry, parts[0], kind);
    double spread = 0;
    if (parts.length > 1) {
      spread =
          parts[1].contains("%")
              ? best * quantity(entry, parts[1], QuantityKind.FRACTION)
              : quantity(entry, parts[1], kind);
    }
    if (Double.isNaN(best) || Double.isNaN(spread)) {
      return Optional.empty();
    }
    if (spread < 0) {
      section.blame(entry, "negative-spread", "has a negative doubt", "write it without a sign");
      return Optional.empty();
    }
    return Optional.of(new Estimate(best, spread, entry.provenance()));
  }

  /** One of a few words; a problem and empty for any other. */
  Optional<String> choice(String key, List<String> choices) {
    return section
        .entry(key)
        .filter(
            entry -> {
              boolean known = choices.contains(entry.text());
              if (!known) {
                section.blame(
                    entry,
                    "unknown-choice",
                    "is not known",
                    "use one of " + String.join(", ", choices));
              }
              return known;
            })
        .map(Entry::text);
  }

  /** Whether a key says yes; no where it is left out. */
  boolean flag(String key) {
    Optional<Entry> entry = section.optionalEntry(key);
    if (entry.isEmpty()) {
      return false;
    }
    String text = entry.get().text().toLowerCase(Locale.ROOT);
    if (!YES.contains(text) && !NO.contains(text)) {
      section.blame(entry.get(), "not-a-flag", "is neither yes nor no", "write yes or no");
    }
    return YES.contains(text);
  }

  /** The words under a key that may be left out. */
  Optional<String> optionalText(String key) {
    return section.optionalEntry(key).map(Entry::text);
  }

  /** A factor of 1 whose doubt is the fraction under a key. */
  Optional<Estimate> factor(String key) {
    return section
        .entry(key)
        .flatMap(
            entry -> {
              double spread = quantity(entry, entry.text(), QuantityKind.FRACTION);
              return Double.isNaN(spread)
                  ? Optional.empty()
                  : Optional.of(new Estimate(1, spread, entry.provenance()));
            });
  }

  /** A range, written "5 Pa to 50 Pa" or as a list of two. */
  Optional<Range> range(String key, QuantityKind kind) {
    return section.entry(key).flatMap(entry -> range(entry, kind));
  }

  private Optional<Range> range(Entry entry, QuantityKind kind) {
    String[] ends = TO.split(entry.text(), 2);
    if (ends.length != 2) {
      section.blame(
          entry, "not-a-range", "is not a range", "write two values such as 5 Pa to 50 Pa");
      return Optional.empty();
    }
    double low = quantity(entry, ends[0], kind);
    double high = quantity(entry, ends[1], kind);
    if (Double.isNaN(low) || Double.isNaN(high)) {
      return Optional.empty();
    }
    if (low > high) {
      section.blame(entry, "range-order", "starts above its end", "write the smaller value first");
      return Optional.empty();
    }
    return Optional.of(new Range(low, high));
  }

  /** A whole number from 1. */
  int count(String key) {
    Optional<Entry> entry = section.entry(key);
    if (entry.isEmpty()) {
      return 0;
    }
    double value = quantity(entry.get(), entry.get().text(), QuantityKind.NUMBER);
    if (!Double.isNaN(value) && (value != Math.rint(value) || value < 1 || value > LARGEST_COUNT)) {
      section.blame(
          entry.get(), "count-range", "must be a whole number from 1", "write for instance 120");
      return 0;
    }
    return Double.isNaN(value) ? 0 : (int) value;
  }

  /** A date and time of the laboratory's clock, if given. */
  Optional<LocalDateTime> optionalTime(String key) {
    Optional<Entry> entry = section.optionalEntry(key);
    if (entry.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDateTime.parse(entry.get().text().replace(' ', 'T')));
    } catch (DateTimeParseException e) {
      section.blame(
          entry.get(), "not-a-time", "is no date and time", "write for instance 2026-11-26 16:30");
      return Optional.empty();
    }
  }

  private double quantity(Entry entry, String text, QuantityKind kind) {
    try {
      return Quantity.parse(text, kind).si();
    } catch (QuantityFormatException e) {
      section.blame(entry, "not-a-quantity", String.valueOf(e.getMessage()), e.advice());
      return Double.NaN;
    }
  }
}
