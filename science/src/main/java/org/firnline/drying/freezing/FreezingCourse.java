package org.firnline.drying.freezing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A vessel on its way from liquid to cold and frozen.
 *
 * @param moments at the times asked for, in their order
 * @param nucleationTime when the first ice appeared, s; empty if it did not
 * @param frozenTime when the last ice had formed, s; empty if it had not
 */
public record FreezingCourse(
    List<FreezingMoment> moments, OptionalDouble nucleationTime, OptionalDouble frozenTime) {

  public FreezingCourse {
    moments = List.copyOf(moments);
  }

  /** The state at the last time asked for. */
  public FreezingMoment last() {
    return moments.get(moments.size() - 1);
  }
}
