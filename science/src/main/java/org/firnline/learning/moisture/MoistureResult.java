package org.firnline.learning.moisture;

import java.util.List;

/**
 * A measured moisture and the warmth the vessel had seen until then.
 *
 * @param name of the sample
 * @param moisture C, kg of water per kg of dry solids; 0 or more
 * @param error one standard deviation of it; positive
 * @param course product temperature since the last ice went, from time 0 to the sample
 */
public record MoistureResult(String name, double moisture, double error, List<Warmth> course) {

  /**
   * Temperature at one time; straight lines between.
   *
   * @param time s since the last ice went
   * @param temperature K; positive
   */
  public record Warmth(double time, double temperature) {}

  public MoistureResult {
    course = List.copyOf(course);
    if (!(moisture >= 0) || !(error > 0) || course.size() < 2) {
      throw new IllegalArgumentException(
          "moisture of "
              + name
              + ": "
              + moisture
              + " ± "
              + error
              + " over "
              + course.size()
              + " temperatures; needs 0 or more, a positive error and at least two temperatures");
    }
  }

  /**
   * Moisture per solids from weights of one vessel.
   *
   * @param dried mass of the dried sample, kg
   * @param dry mass after loss on drying, kg; positive
   * @param ofWeighing standard deviation of a difference of two weighings, kg
   */
  public static MoistureResult ofLoss(
      String name, double dried, double dry, double ofWeighing, List<Warmth> course) {
    return new MoistureResult(name, Math.max(0, (dried - dry) / dry), ofWeighing / dry, course);
  }
}
