package org.firnline.planning;

import java.util.List;

/**
 * One line of the check list: what was looked at, what it says and the numbers behind it. The words
 * are the reader's language and live with the screens.
 *
 * @param subject what was looked at
 * @param verdict what it says
 * @param figures the numbers behind it, the decisive one first
 */
public record CheckLine(Subject subject, Verdict verdict, List<Figure> figures) {

  /** What a line looks at. */
  public enum Subject {
    /** Ice sublimes at these settings at all. */
    SUBLIMATION,
    /** The warmest vessel stays below the critical temperature. */
    PRODUCT_TEMPERATURE,
    /** The dryer carries the vapor at this pressure. */
    CAPABILITY,
    /** The collector holds all the ice. */
    COLLECTOR_CAPACITY,
    /** The collector takes the ice as fast as it comes. */
    COLLECTOR_RATE,
    /** The collector is cold enough for this pressure. */
    COLLECTOR_TEMPERATURE,
    /** The shelf reaches the settings. */
    SHELF_RANGE,
    /** The pressure control reaches the settings. */
    PRESSURE_RANGE,
    /** The layer is thin enough to dry in fair time. */
    LAYER_DEPTH,
    /** Somebody is there when the run is done. */
    ATTENDANCE
  }

  public CheckLine {
    figures = List.copyOf(figures);
  }

  /** The figure called {@code name}. */
  public Figure figure(String name) {
    return figures.stream()
        .filter(figure -> figure.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(subject + " has no figure " + name));
  }
}
