package org.firnline.logs.layout;

import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.channel.Role;

/**
 * What a column is taken to be.
 *
 * @param role its role
 * @param roleConfidence how sure
 * @param roleReason why, in words
 * @param unit its unit; empty for pure numbers, text and unknown units
 * @param unitConfidence how sure
 * @param unitReason why, in words
 */
public record RoleVerdict(
    Role role,
    Confidence roleConfidence,
    String roleReason,
    Optional<ColumnUnit> unit,
    Confidence unitConfidence,
    String unitReason) {
  public RoleVerdict {
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(roleConfidence, "roleConfidence");
    Objects.requireNonNull(roleReason, "roleReason");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(unitConfidence, "unitConfidence");
    Objects.requireNonNull(unitReason, "unitReason");
  }

  /** The same column in another role. */
  public RoleVerdict as(Role value, Confidence confidence, String reason) {
    return new RoleVerdict(value, confidence, reason, unit, unitConfidence, unitReason);
  }

  /** The same column in another unit. */
  public RoleVerdict in(ColumnUnit value, Confidence confidence, String reason) {
    return new RoleVerdict(
        role, roleConfidence, roleReason, Optional.of(value), confidence, reason);
  }
}
