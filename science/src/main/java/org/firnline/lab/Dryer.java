package org.firnline.lab;

import java.util.List;
import java.util.Optional;

/**
 * A freeze-dryer.
 *
 * @param name what the lab calls it; not blank
 * @param shelves its temperature-controlled shelves; empty for a manifold or a drum in room air
 * @param pressureControl settings its pressure control accepts, Pa; empty where pressure floats
 * @param capability vapor it carries to the collector
 * @param collector its ice collector
 * @param chamber its room
 * @param gauges its pressure gauges
 */
public record Dryer(
    String name,
    Optional<Shelves> shelves,
    Optional<Range> pressureControl,
    Capability capability,
    Collector collector,
    Chamber chamber,
    List<Gauge> gauges) {

  public Dryer {
    Check.named(name, "dryer name");
    pressureControl.ifPresent(
        range -> Check.positive(range.low(), "lowest chamber pressure", "Pa"));
    gauges = List.copyOf(gauges);
    Check.that(
        gauges.stream().map(Gauge::name).distinct().count() == gauges.size(),
        "same-name",
        "gauges",
        "two gauges of one name",
        "cannot be told apart",
        "name them differently");
  }

  /**
   * A dryer with shelves and pressure control, its chamber and gauges unknown.
   *
   * @param shelfTemperature settings its shelves accept, K
   * @param pressure settings its pressure control accepts, Pa
   * @param shelfRamp fastest change of shelf temperature, K/s
   */
  public Dryer(
      String name,
      Range shelfTemperature,
      Range pressure,
      double shelfRamp,
      Capability capability,
      Collector collector) {
    this(
        name,
        Optional.of(Shelves.of(shelfTemperature, shelfRamp)),
        Optional.of(pressure),
        capability,
        collector,
        Chamber.UNKNOWN,
        List.of());
  }

  /**
   * A dryer whose product is warmed by the room and whose pressure floats, its chamber and gauges
   * unknown.
   */
  public static Dryer inRoomAir(String name, Capability capability, Collector collector) {
    return new Dryer(
        name,
        Optional.empty(),
        Optional.empty(),
        capability,
        collector,
        Chamber.UNKNOWN,
        List.of());
  }

  /** This dryer with a known chamber and gauges. */
  public Dryer with(Chamber known, List<Gauge> onIt) {
    return new Dryer(name, shelves, pressureControl, capability, collector, known, onIt);
  }

  /**
   * Settings its shelves accept, K.
   *
   * @throws IllegalStateException if it has no shelves
   */
  public Range shelfTemperature() {
    return shelves.orElseThrow(() -> without("shelves")).temperature();
  }

  /**
   * Fastest change of shelf temperature, K/s.
   *
   * @throws IllegalStateException if it has no shelves
   */
  public double shelfRamp() {
    return shelves.orElseThrow(() -> without("shelves")).ramp();
  }

  /**
   * Settings its pressure control accepts, Pa.
   *
   * @throws IllegalStateException if it has no pressure control
   */
  public Range pressure() {
    return pressureControl.orElseThrow(() -> without("pressure control"));
  }

  private IllegalStateException without(String part) {
    return new IllegalStateException("dryer " + name + " has no " + part);
  }
}
