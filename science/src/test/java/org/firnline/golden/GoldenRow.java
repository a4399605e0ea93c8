package org.firnline.golden;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.firnline.units.Quantity;
import org.firnline.units.QuantityKind;
import org.firnline.units.Unit;

/** One published value with its tolerance, source and status. A row with a blank is refused. */
public record GoldenRow(
    String quantity,
    String condition,
    double value,
    String unit,
    double tolerance,
    boolean relative,
    String toleranceReason,
    String source,
    String status) {

  /** The rows of {@code golden/NAME}. */
  public static Stream<GoldenRow> of(String name) {
    try (Reader text =
            new InputStreamReader(
                GoldenRow.class.getResourceAsStream("/golden/" + name), StandardCharsets.UTF_8);
        CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
      return List.copyOf(rows.stream().map(GoldenRow::read).toList()).stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static GoldenRow read(NamedCsvRecord row) {
    if (row.getFields().stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException("blank in golden row " + row);
    }
    return new GoldenRow(
        row.getField("quantity"),
        row.getField("condition"),
        Double.parseDouble(row.getField("value")),
        row.getField("unit"),
        Double.parseDouble(row.getField("tolerance")),
        row.getField("tolerance_kind").equals("relative"),
        row.getField("tolerance_reason"),
        row.getField("source"),
        row.getField("status"));
  }

  /** The printed value in SI. */
  public double si(QuantityKind kind) {
    return Quantity.of(value, Unit.parse(unit), kind).si();
  }

  /** The condition read as a quantity, in SI. */
  public double conditionSi(QuantityKind kind) {
    return Quantity.parse(condition, kind).si();
  }

  /** The greatest difference allowed, SI. */
  public double allowed(QuantityKind kind) {
    return relative ? tolerance * Math.abs(si(kind)) : Unit.parse(unit).differenceToSi(tolerance);
  }

  @Override
  public String toString() {
    return quantity + " at " + condition + " = " + value + " " + unit + " (" + status + ")";
  }
}
