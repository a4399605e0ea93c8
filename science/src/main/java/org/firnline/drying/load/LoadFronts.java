package org.firnline.drying.load;

import java.util.List;
import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.FrontFollower;
import org.firnline.drying.primary.HeatSupply;

/** The fronts of all groups of a load, solved together at one shelf temperature and pressure. */
final class LoadFronts {

  private final List<VesselGroup> groups;
  private final List<FrontFollower> followers;
  private final double shelf;

  LoadFronts(DryingLoad load, double shelf_K) {
    this.groups = load.groups();
    this.followers = groups.stream().map(group -> new FrontFollower(group.vessel())).toList();
    this.shelf = shelf_K;
  }

  int size() {
    return groups.size();
  }

  double thickness(int group) {
    return groups.get(group).vessel().geometry().thickness();
  }

  /**
   * Vapor of the whole load, kg/s.
   *
   * @param depths dried depth of each group, m; a group dried through gives nothing
   * @param running whether each group still holds ice
   */
  double totalRate(double[] depths, boolean[] running, double pressure_Pa) {
    double coldest = FastFront.coldest(pressure_Pa);
    double total = 0;
    for (int group = 0; group < groups.size(); group++) {
      if (running[group]) {
        HeatSupply supply = groups.get(group).heat().at(shelf, pressure_Pa);
        double rate = followers.get(group).solve(supply, pressure_Pa, coldest, depths[group]);
        total += groups.get(group).count() * rate;
      }
    }
    return total;
  }

  /** Speed of one group's front after {@link #totalRate}, m/s. */
  double speed(int group, double depth_m) {
    double held = Math.min(depth_m, thickness(group));
    return followers.get(group).rate() / groups.get(group).vessel().geometry().icePerDepth(held);
  }

  /** Warmest frozen point of all running groups after {@link #totalRate}, K. */
  double warmest(boolean[] running) {
    double warmest = 0;
    for (int group = 0; group < groups.size(); group++) {
      if (running[group]) {
        warmest = Math.max(warmest, followers.get(group).warmest());
      }
    }
    return warmest;
  }

  /** Whether any running group would melt after {@link #totalRate}. */
  boolean melts(boolean[] running) {
    for (int group = 0; group < groups.size(); group++) {
      if (running[group] && followers.get(group).melts()) {
        return true;
      }
    }
    return false;
  }
}
