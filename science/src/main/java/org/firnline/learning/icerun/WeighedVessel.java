package org.firnline.learning.icerun;

/**
 * One vessel before and after an ice run.
 *
 * @param name number or label
 * @param position class of its place, such as center, edge or corner
 * @param before mass with its ice before, kg; positive
 * @param after mass after, kg; positive and below {@code before}
 */
public record WeighedVessel(String name, String position, double before, double after) {

  public WeighedVessel {
    if (!(before > 0) || !(after > 0) || !(after < before)) {
      throw new IllegalArgumentException(
          "vessel " + name + " weighed " + before + " kg before and " + after + " kg after");
    }
  }

  /** Ice lost, kg. */
  public double loss() {
    return before - after;
  }
}
