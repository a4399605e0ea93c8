package org.firnline.review;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firnline.logs.Log;
import org.firnline.logs.PreambleEntry;
import org.firnline.logs.text.PlainWords;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;
import org.firnline.units.QuantityKind;

/**
 * The temperature the product must stay below.
 *
 * @param limit_K the limit, K; empty if nothing names one
 * @param source where it comes from, in words
 */
record CriticalTemperature(OptionalDouble limit_K, String source) {
  private static final List<String> WORDS =
      List.of(
          "critical",
          "collapse",
          "eutectic",
          "kritisch",
          "kritische",
          "kollaps",
          "eutektikum",
          "eutektische",
          "critique",
          "effondrement",
          "eutectique",
          "critica",
          "colapso",
          "eutectica",
          "collasso",
          "eutettica",
          "tc");
  private static final Pattern VALUE =
      Pattern.compile("([-−+]?\\s*\\d+(?:[.,]\\d+)?)\\s*(°\\s*[CF]|deg\\s*[CF]|[CFK])?\\b.*");

  CriticalTemperature {
    Objects.requireNonNull(limit_K, "limit_K");
    Objects.requireNonNull(source, "source");
  }

  /** From the context, else from the log's own preamble. */
  static CriticalTemperature of(Log log, ReviewContext context) {
    if (context.criticalTemperature_K().isPresent()) {
      return new CriticalTemperature(context.criticalTemperature_K(), "given for this review");
    }
    for (PreambleEntry entry : log.preamble()) {
      if (PlainWords.split(entry.key()).stream().anyMatch(WORDS::contains)) {
        Optional<Double> value = value(entry.value());
        if (value.isPresent()) {
          return new CriticalTemperature(
              OptionalDouble.of(value.get()),
              "line " + entry.line() + " of the log: " + entry.key() + " " + entry.value());
        }
      }
    }
    return new CriticalTemperature(OptionalDouble.empty(), "");
  }

  private static Optional<Double> value(String text) {
    Matcher matcher = VALUE.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String unit = matcher.group(2) == null ? "°C" : matcher.group(2).replace(" ", "");
    try {
      String number = matcher.group(1).replace(" ", "");
      double kelvin = Quantity.parse(number + " " + unit, QuantityKind.TEMPERATURE).si();
      return kelvin > 150 && kelvin < 320 ? Optional.of(kelvin) : Optional.empty();
    } catch (QuantityFormatException e) {
      return Optional.empty();
    }
  }
}
