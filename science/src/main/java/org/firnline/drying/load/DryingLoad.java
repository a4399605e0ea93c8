package org.firnline.drying.load;

import java.util.List;

/**
 * All vessels that dry together, in groups of equals.
 *
 * @param groups at least one
 */
public record DryingLoad(List<VesselGroup> groups) {

  public DryingLoad {
    groups = List.copyOf(groups);
    if (groups.isEmpty()) {
      throw new IllegalArgumentException("a load without vessels");
    }
  }

  /** A load of one group. */
  public static DryingLoad of(VesselGroup group) {
    return new DryingLoad(List.of(group));
  }

  /** Ice in all vessels at the start, kg. */
  public double ice() {
    return groups.stream().mapToDouble(VesselGroup::ice).sum();
  }
}
