package org.firnline.review;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.firnline.logs.SharedLogs;

/**
 * One row of what really happened in an example log.
 *
 * @param quantity what it is
 * @param file log it belongs to
 * @param value its true value
 * @param tolerance how near an answer must come
 */
record Truth(String quantity, String file, double value, double tolerance) {

  static List<Truth> of(String file) {
    return all().stream().filter(truth -> truth.file().equals(file)).toList();
  }

  static double value(String file, String quantity) {
    return of(file).stream()
        .filter(truth -> truth.quantity().equals(quantity))
        .findFirst()
        .orElseThrow()
        .value();
  }

  static List<Truth> all() {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(SharedLogs.class.getResourceAsStream("/logs/truth.csv")),
                StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", -1))
          .map(
              cells ->
                  new Truth(
                      cells[0],
                      cells[1],
                      Double.parseDouble(cells[2]),
                      Double.parseDouble(cells[4])))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
