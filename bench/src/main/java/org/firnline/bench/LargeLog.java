package org.firnline.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Locale;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.firnline.logs.ReadingChoices;
import org.firnline.review.ReviewContext;
import org.firnline.review.Reviewer;

/**
 * Reads large invented logs once, from disk, in whatever heap Java was given, and prints one row of
 * a table for each. Arguments: a scratch folder. {@code scripts/large-log.sh} runs it.
 */
public final class LargeLog {
  private static final int PATTERN_ROWS = 1_000;

  private LargeLog() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Files.createDirectories(folder);
    Path large = written(folder.resolve("rows-1000000x40.csv"), 1_000_000, 40);
    report("1 000 000 rows × 40 channels, CSV: read", large, 30, () -> read(large));
    Path packed = packed(large, folder.resolve("rows-1000000x40.csv.gz"));
    report("the same, gzip: read", packed, 30, () -> read(packed));
    Path run = written(folder.resolve("rows-500000x10.csv"), 500_000, 10);
    report("500 000 rows × 10 channels: kept, read, reviewed", run, 10, () -> whole(folder, run));
  }

  /** Work on a file. */
  private interface Work {
    Reading done() throws IOException;
  }

  private static void report(String what, Path file, double most_s, Work work) throws IOException {
    ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
    long begin = System.nanoTime();
    long computed = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    Reading reading = work.done();
    double took_s = (System.nanoTime() - begin) / 1e9;
    double computed_s =
        (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - computed) / 1e9;
    long peak =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .mapToLong(pool -> pool.getPeakUsage().getUsed())
            .sum();
    System.out.printf(
        Locale.ROOT,
        "| %s | %d MB | %d | %d MiB | %.1f s | %.1f s | %.0f s | %s |%n",
        what,
        Files.size(file) / 1_000_000,
        reading.rows().kept(),
        peak >> 20,
        computed_s,
        took_s,
        most_s,
        took_s <= most_s ? "kept" : "missed");
  }

  private static Reading read(Path file) {
    return new LogReader()
        .read(file.toString(), () -> Files.newInputStream(file), ReadingChoices.none());
  }

  /** As a file that arrives is treated: copied with its digest, forced to disk, read, reviewed. */
  private static Reading whole(Path folder, Path file) throws IOException {
    Path kept = folder.resolve("kept");
    try (InputStream in = Files.newInputStream(file);
        OutputStream out = new DigestOutputStream(Files.newOutputStream(kept), sha256())) {
      in.transferTo(out);
    }
    Reading reading = read(kept);
    new Reviewer().review(reading.log().orElseThrow(), ReviewContext.none());
    return reading;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static Path packed(Path plain, Path packed) throws IOException {
    if (!Files.exists(packed)) {
      try (InputStream in = Files.newInputStream(plain);
          OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
        in.transferTo(out);
      }
    }
    return packed;
  }

  /** An invented run of a row in ten seconds: shelf, pressure, collector and product channels. */
  private static Path written(Path file, int rows, int channels) throws IOException {
    if (Files.exists(file)) {
      return file;
    }
    try (Writer text =
        new OutputStreamWriter(
            new BufferedOutputStream(Files.newOutputStream(file), 1 << 16),
            StandardCharsets.UTF_8)) {
      text.append("time UTC,Shelf [°C],Chamber pressure [Pa],Collector [°C]");
      for (int i = 3; i < channels; i++) {
        text.append(",Product " + (i - 2) + " [°C]");
      }
      text.append('\n');
      String[] pattern = pattern(channels);
      Instant start = Instant.parse("2026-01-05T08:00:00Z");
      for (int row = 0; row < rows; row++) {
        text.append(start.plusSeconds(10L * row).toString()).append(pattern[row % PATTERN_ROWS]);
      }
    }
    return file;
  }

  private static String[] pattern(int channels) {
    Random noise = new Random(40);
    String[] rows = new String[PATTERN_ROWS];
    for (int row = 0; row < PATTERN_ROWS; row++) {
      StringBuilder text = new StringBuilder();
      for (int channel = 0; channel < channels; channel++) {
        double usual = channel == 0 ? -20 : channel == 1 ? 9 : channel == 2 ? -62 : -34;
        text.append(String.format(Locale.ROOT, ",%.2f", usual + 0.3 * noise.nextGaussian()));
      }
      rows[row] = text.append('\n').toString();
    }
    return rows;
  }
}
