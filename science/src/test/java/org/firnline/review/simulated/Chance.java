package org.firnline.review.simulated;

import java.util.List;
import org.firnline.numerics.SeededUniform;

/** The chances of one simulated run, each under its own name, so that one more changes no other. */
record Chance(long number) {

  double uniform(String what, double from, double to) {
    return from + (to - from) * at(what);
  }

  double logUniform(String what, double from, double to) {
    return from * Math.pow(to / from, at(what));
  }

  double normal(String what, double deviation) {
    return deviation * new SeededUniform(20261125).normalAt(number, what.hashCode(), 0);
  }

  <T> T oneOf(String what, List<T> choices) {
    return choices.get((int) (at(what) * choices.size()));
  }

  private double at(String what) {
    return new SeededUniform(20261125).at(number, what.hashCode(), 0);
  }
}
