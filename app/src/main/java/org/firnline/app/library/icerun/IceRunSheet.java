package org.firnline.app.library.icerun;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.app.words.Quantities;
import org.firnline.app.words.Words;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Problem;
import org.firnline.evidence.Provenance;
import org.firnline.lab.Iso8362Vial;
import org.firnline.learning.icerun.Balance;
import org.firnline.learning.icerun.IceRun;
import org.firnline.learning.icerun.WeighedVessel;
import org.firnline.learning.uncertainty.MeasuredInput;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.matter.Water;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityFormatException;
import org.firnline.units.QuantityKind;

/**
 * Reads the sheet of a weighed ice run: lines "what, value", then a table of vessels with position,
 * mass before and mass after. Values carry their unit, and their standard deviation after "±" or
 * "+-". A mass column may name its unit in the heading instead.
 */
public final class IceRunSheet {
  private static final String UNIT_IN_HEADING = ".*[(\\[]\\s*([^)\\]]+?)\\s*[)\\]].*";
  private static final double ICE_TEMPERATURE_DOUBT_K = 1;

  /** Tolerance of a tubing vial's outer diameter, ISO 8362-1 (from memory). */
  private static final double DIAMETER_TOLERANCE_M = 0.25e-3;

  private final String name;
  private final Words words;
  private final SheetEntries entries = new SheetEntries();
  private final List<WeighedVessel> vessels = new ArrayList<>();
  private final List<String> assumed = new ArrayList<>();

  private IceRunSheet(String name, Words words) {
    this.name = name;
    this.words = words;
  }

  /**
   * Reads a sheet.
   *
   * @param name of the file or field, for messages
   * @param words language in which it says what it assumed
   */
  public static IceRunReading read(String name, String text, Words words) {
    IceRunSheet sheet = new IceRunSheet(name, words);
    sheet.lines(SheetCells.of(text.replace("\uFEFF", "")).rows());
    Optional<IceRun> run = sheet.run();
    return new IceRunReading(
        sheet.entries.isUsable() ? run : Optional.empty(),
        sheet.entries.text(SheetKey.DRYER),
        sheet.entries.problems(),
        sheet.assumed);
  }

  private void lines(List<List<String>> rows) {
    int number = 0;
    List<String> heading = List.of();
    for (List<String> row : rows) {
      number++;
      if (row.isEmpty() || row.get(0).startsWith("#")) {
        continue;
      }
      String where = name + ", line " + number;
      if (!heading.isEmpty()) {
        weighing(heading, row, where);
      } else if (isHeading(row)) {
        heading = row;
      } else {
        entry(row, where);
      }
    }
    if (heading.isEmpty()) {
      blame(
          "no-table",
          "there is no table of vessels",
          name,
          "a sheet ends with the weighings",
          "add" + " a line 'vessel, position, before (g), after (g)' and one line for each vessel");
    }
  }

  private static boolean isHeading(List<String> row) {
    return row.size() >= 4
        && row.get(0).toLowerCase(Locale.ROOT).startsWith("vessel")
        && row.stream().anyMatch(cell -> cell.toLowerCase(Locale.ROOT).startsWith("before"));
  }

  private void entry(List<String> row, String where) {
    Optional<SheetKey> key = SheetKey.find(row.get(0));
    if (key.isEmpty()) {
      blame(
          "unknown-line",
          "'" + row.get(0) + "' is no line of an ice-run sheet",
          where,
          "known lines are " + known(),
          "correct it, or put # before it");
      return;
    }
    if (row.size() > 1) {
      entries.put(key.get(), String.join(" ", row.subList(1, row.size())), where);
    }
  }

  private static String known() {
    List<String> known = new ArrayList<>();
    for (SheetKey key : SheetKey.values()) {
      known.add(key.text());
    }
    return String.join(", ", known);
  }

  private void weighing(List<String> heading, List<String> row, String where) {
    if (row.size() < 4) {
      blame(
          "short-row",
          "the row of vessel " + row.get(0) + " has " + row.size() + " cells",
          where,
          "it needs vessel, position, before and after",
          "fill it in, or put # before it");
      return;
    }
    double before = mass(heading.get(2), row.get(2), where);
    double after = mass(heading.get(3), row.get(3), where);
    if (Double.isNaN(before) || Double.isNaN(after)) {
      return;
    }
    try {
      vessels.add(new WeighedVessel(row.get(0), row.get(1), before, after));
    } catch (IllegalArgumentException e) {
      blame(
          "no-loss",
          String.valueOf(e.getMessage()),
          where,
          "ice only leaves during an ice run",
          "check both weighings");
    }
  }

  private double mass(String heading, String cell, String where) {
    String unit = heading.matches(UNIT_IN_HEADING) ? heading.replaceAll(UNIT_IN_HEADING, "$1") : "";
    String text = cell.replaceAll("^(\\d+),(\\d+)$", "$1.$2");
    return entries.quantity(
        text.matches("[0-9.]+") ? text + " " + unit : text, QuantityKind.MASS, where);
  }

  private Optional<IceRun> run() {
    for (SheetKey key : SheetKey.values()) {
      if (key.needed() && !entries.has(key)) {
        blame(
            "missing-line",
            "the line '" + key.text() + "' is missing or empty",
            name,
            "a sheet needs it",
            "add it with its value and unit");
      }
    }
    if (!entries.isUsable()) {
      return Optional.empty();
    }
    Estimate pressure = entries.estimate(SheetKey.CHAMBER_PRESSURE, QuantityKind.PRESSURE);
    Estimate area = area();
    Balance balance =
        new Balance(
            entries.estimate(SheetKey.BALANCE_RESOLUTION, QuantityKind.MASS).best(),
            entries.has(SheetKey.BALANCE_REPEATABILITY)
                ? entries.estimate(SheetKey.BALANCE_REPEATABILITY, QuantityKind.MASS).best()
                : 0);
    Estimate time = entries.estimate(SheetKey.TIME, QuantityKind.TIME);
    Estimate shelf = entries.estimate(SheetKey.SHELF_TEMPERATURE, QuantityKind.TEMPERATURE);
    Estimate ice = iceTemperature(pressure);
    double start = iceAtStart();
    if (!entries.isUsable()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new IceRun(
              entries.text(SheetKey.ICE_RUN),
              entries.text(SheetKey.VESSEL),
              pressure,
              time,
              shelf,
              ice,
              area,
              start,
              balance,
              vessels));
    } catch (IllegalArgumentException e) {
      blame(
          "impossible", String.valueOf(e.getMessage()), name, "that cannot be", "check the sheet");
      return Optional.empty();
    }
  }

  private Estimate area() {
    String vessel = entries.text(SheetKey.VESSEL);
    Estimate diameter;
    if (entries.has(SheetKey.OUTER_DIAMETER)) {
      diameter = entries.estimate(SheetKey.OUTER_DIAMETER, QuantityKind.LENGTH);
    } else {
      Optional<Iso8362Vial> nominal = Iso8362Vial.find(vessel);
      if (nominal.isEmpty()) {
        blame(
            "no-diameter",
            "'" + vessel + "' is no vial size of ISO 8362-1",
            entries.where(SheetKey.VESSEL),
            "the heat transfer refers to the outer bottom area",
            "add the line 'outer diameter' with its value and unit");
        return SheetEntries.UNUSABLE;
      }
      diameter =
          new Estimate(
              nominal.get().nominal().outerDiameter(),
              MeasuredInput.within(DIAMETER_TOLERANCE_M),
              new Provenance.Assumed("nominal size"));
      assumed.add(
          words.say(
              "icerun.assumed.diameter",
              Quantities.words(diameter.best(), QuantityKind.LENGTH),
              vessel));
    }
    double best = Math.PI / 4 * diameter.best() * diameter.best();
    return new Estimate(
        best, 2 * best * diameter.spread() / diameter.best(), diameter.provenance());
  }

  private Estimate iceTemperature(Estimate pressure) {
    if (entries.has(SheetKey.ICE_TEMPERATURE)) {
      return entries.estimate(SheetKey.ICE_TEMPERATURE, QuantityKind.TEMPERATURE);
    }
    double ice =
        new WagnerEtAl2011Ice()
            .saturationTemperature(
                Math.min(Math.max(pressure.best(), 1e-3), Water.TRIPLE_POINT_PRESSURE));
    assumed.add(words.say("icerun.assumed.ice", Quantities.words(ice, QuantityKind.TEMPERATURE)));
    return new Estimate(
        ice, ICE_TEMPERATURE_DOUBT_K, new Provenance.Assumed("equilibrium with the chamber"));
  }

  /** Kilograms, from a mass or from a volume of water. */
  private double iceAtStart() {
    String text = entries.text(SheetKey.ICE_PER_VESSEL);
    try {
      return Quantity.parse(text, QuantityKind.VOLUME).si() * 1_000;
    } catch (QuantityFormatException noVolume) {
      return entries.quantity(text, QuantityKind.MASS, entries.where(SheetKey.ICE_PER_VESSEL));
    }
  }

  private void blame(String code, String what, String where, String rule, String advice) {
    entries.blame(new Problem(code, what, where, rule, advice));
  }
}
