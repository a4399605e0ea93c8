package org.firnline.drying.icerun;

import java.util.List;
import java.util.Optional;
import org.firnline.evidence.Estimate;
import org.firnline.lab.EdgeHeat;

/**
 * What was measured in an ice run on one vessel, or the mean of many alike.
 *
 * @param name of the run, for the provenance
 * @param iceAtStart kg; positive
 * @param loss mass lost, kg; best positive, at most {@code iceAtStart}
 * @param vesselArea A_v: outer bottom area, m2; best positive
 * @param frontTemperature T_i: ice in equilibrium with the chamber pressure, K
 * @param course shelf and bottom temperatures over the run; at least two, times rising
 * @param temperatureDoubt one standard deviation of a common error of shelf minus bottom, K; 0 or
 *     more
 * @param wall heat from a wall that is to be subtracted; empty for vessels amid their like
 */
public record IceRunRecord(
    String name,
    double iceAtStart,
    Estimate loss,
    Estimate vesselArea,
    double frontTemperature,
    List<IceRunMoment> course,
    double temperatureDoubt,
    Optional<EdgeHeat.Side> wall) {

  public IceRunRecord {
    course = List.copyOf(course);
    if (!(loss.best() > 0) || !(loss.best() <= iceAtStart)) {
      throw new IllegalArgumentException(
          "a loss of " + loss.best() + " kg out of " + iceAtStart + " kg of ice cannot be");
    }
    if (!(vesselArea.best() > 0) || !(temperatureDoubt >= 0)) {
      throw new IllegalArgumentException("area must be positive, doubt 0 or more");
    }
    if (course.size() < 2) {
      throw new IllegalArgumentException("an ice run needs temperatures at two times or more");
    }
    for (int i = 1; i < course.size(); i++) {
      if (!(course.get(i).time() > course.get(i - 1).time())) {
        throw new IllegalArgumentException(
            "temperatures at " + course.get(i).time() + " s are out of order");
      }
    }
  }

  /** Share of the ice that is gone, 0 to 1. */
  public double driedShare() {
    return loss.best() / iceAtStart;
  }

  /** Length of the run, s. */
  double length() {
    return course.get(course.size() - 1).time() - course.get(0).time();
  }

  /** ∫ (T_shelf − T_bottom) dt by trapezoids, K s. */
  double drive() {
    double sum = 0;
    for (int i = 1; i < course.size(); i++) {
      IceRunMoment before = course.get(i - 1);
      IceRunMoment now = course.get(i);
      double mean = (before.shelf() - before.bottom() + now.shelf() - now.bottom()) / 2;
      sum += mean * (now.time() - before.time());
    }
    return sum;
  }

  /** ∫ (T_wall − T_bottom) dt by trapezoids, K s. */
  double drive(double wall_K) {
    double sum = 0;
    for (int i = 1; i < course.size(); i++) {
      double mean = wall_K - (course.get(i - 1).bottom() + course.get(i).bottom()) / 2;
      sum += mean * (course.get(i).time() - course.get(i - 1).time());
    }
    return sum;
  }
}
