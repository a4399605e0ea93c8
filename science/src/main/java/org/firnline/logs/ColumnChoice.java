package org.firnline.logs;

import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Role;

/**
 * What a person says about one column.
 *
 * @param role what it measures
 * @param unit its unit, spelled as in a file: "°C", "mTorr", "x10-3 mbar" ...
 */
public record ColumnChoice(Optional<Role> role, Optional<String> unit) {
  public ColumnChoice {
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(unit, "unit");
  }
}
