package org.firnline.lab;

/**
 * A freeze-dryer with temperature-controlled shelves and pressure control.
 *
 * @param name what the lab calls it; not blank
 * @param shelfTemperature settings its shelves accept, K
 * @param pressure settings its pressure control accepts, Pa
 * @param shelfRamp fastest change of shelf temperature, K/s; positive
 * @param capability vapor it carries to the collector
 * @param collector its ice collector
 */
public record Dryer(
    String name,
    Range shelfTemperature,
    Range pressure,
    double shelfRamp,
    Capability capability,
    Collector collector) {

  public Dryer {
    Check.that(
        !name.isBlank(),
        "no-name",
        "dryer name",
        "the dryer has no name",
        "needs one",
        "type a name");
    Check.positive(shelfTemperature.low(), "lowest shelf temperature", "K");
    Check.positive(pressure.low(), "lowest chamber pressure", "Pa");
    Check.positive(shelfRamp, "shelf ramp", "K/s");
  }
}
