package org.firnline.lab;

/**
 * The cold surface on which a dryer catches the vapor as ice.
 *
 * @param capacity ice it holds before it must be defrosted, kg; positive
 * @param rate ice it takes per time for as long as needed, kg/s; positive, infinite if unknown
 * @param temperature coldest temperature under load, K; below the melting point
 */
public record Collector(double capacity, double rate, double temperature) {

  public Collector {
    Check.positive(capacity, "collector capacity", "kg");
    Check.that(
        rate > 0,
        "not-positive",
        "collector rate",
        "collector rate " + rate + " kg/s",
        "must be above 0",
        "give for instance 2 kg/d");
    Check.that(
        temperature > 50 && temperature < 273.16,
        "collector-temperature-range",
        "collector temperature",
        "collector temperature " + temperature + " K",
        "must be below freezing and above 50 K",
        "give for instance -55 °C");
  }
}
