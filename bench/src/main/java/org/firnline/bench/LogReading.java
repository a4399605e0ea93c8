package org.firnline.bench;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Any log file, understood, against the same bytes merely split into cells. */
@Question(
    asks = "How many values of a log file can be read?",
    counts = "values",
    perCall = LogReading.VALUES,
    baseline = "FastCSV splitting the same bytes into text cells, nothing understood",
    trap =
        "The baseline does much less: no numbers, times, units or doubt about encoding and decimal"
            + " mark. It marks how fast bytes become cells here at all, so the ratio says what"
            + " understanding costs and stays below 1. The file is in memory; a disk would hide both.")
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LogReading {
  static final int ROWS = 100_000;
  static final int CHANNELS = 7;
  static final int VALUES = ROWS * CHANNELS;

  private final byte[] file = file();
  private final LogReader reader = new LogReader();

  @Benchmark
  public Reading firnline() {
    return reader.read("bench.csv", file);
  }

  /** The number of characters in all cells, so that no cell can be left out. */
  @Benchmark
  public long baseline() throws IOException {
    long characters = 0;
    var text = new InputStreamReader(new ByteArrayInputStream(file), StandardCharsets.UTF_8);
    try (CsvReader<CsvRecord> records = CsvReader.builder().ofCsvRecord(text)) {
      for (CsvRecord row : records) {
        for (int cell = 0; cell < row.getFieldCount(); cell++) {
          characters += row.getField(cell).length();
        }
      }
    }
    return characters;
  }

  /** An invented run, one row in ten seconds. */
  static byte[] file() {
    var text =
        new StringBuilder(ROWS * 70)
            .append("Time,Shelf (°C),Product 1 (°C),Product 2 (°C),")
            .append("Chamber pressure Pirani (Pa),Chamber pressure capacitance (Pa),")
            .append("Condenser (°C),Shelf set point (°C)\n");
    LocalDateTime start = LocalDateTime.of(2026, 3, 2, 8, 0);
    for (int row = 0; row < ROWS; row++) {
      double wave = Math.sin(row / 500.0);
      text.append(start.plusSeconds(10L * row).format(DateTimeFormatter.ISO_LOCAL_DATE_TIME))
          .append(
              String.format(
                  Locale.ROOT,
                  ",%.2f,%.2f,%.2f,%.3f,%.3f,%.1f,%.1f\n",
                  -20 + wave,
                  -35 + 0.7 * wave,
                  -34.5 + 0.5 * wave,
                  15 + wave,
                  10 + 0.2 * wave,
                  -62 + 0.3 * wave,
                  -20.0));
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
