package org.firnline.logs.channel;

import java.util.List;
import java.util.Objects;

/**
 * One column of a log.
 *
 * @param name name as the file writes it, without a unit in brackets or behind a space
 * @param role what it measures
 * @param roleConfidence how sure the role is
 * @param unit unit as the file writes it, empty if it writes none
 * @param unitConfidence how sure the unit is
 * @param series the samples: SI values in {@code role.dimension()}, each with its quality; for text
 *     channels the values are positions in {@code labels}
 * @param labels the distinct texts of a text channel in order of first appearance; empty otherwise
 */
public record Channel(
    String name,
    Role role,
    Confidence roleConfidence,
    String unit,
    Confidence unitConfidence,
    Series series,
    List<String> labels) {

  public Channel {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(roleConfidence, "roleConfidence");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(unitConfidence, "unitConfidence");
    Objects.requireNonNull(series, "series");
    labels = List.copyOf(labels);
  }
}
