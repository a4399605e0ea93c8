package org.firnline.drying.cycle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.firnline.numerics.SeededUniform;
import org.firnline.units.Figures;
import org.firnline.units.Unit;

/**
 * A simulated cycle as a dryer would log it: sampled evenly, with what its sensors add. The
 * capacitance gauge stays at its full scale above it; the thermal gauge reads P (1 + g x_w).
 *
 * @param run the cycle
 * @param dryer whose gauges read
 * @param sensors what they add
 * @param interval s; positive
 */
public record CycleLog(CycleRun run, CycleDryer dryer, Sensors sensors, double interval) {

  private static final Unit CELSIUS = Unit.parse("°C");

  public CycleLog {
    if (!(interval > 0)) {
      throw new IllegalArgumentException("interval " + interval + " s is not positive");
    }
  }

  /**
   * Lines of a log in comma-separated form, the heading first.
   *
   * @param start when the first row was written
   */
  public List<String> lines(Instant start) {
    List<String> lines = new ArrayList<>();
    lines.add(heading());
    Noise noise = new Noise(sensors.seed());
    double[] seen = products(0);
    double kept = sensors.lag() == 0 ? 0 : Math.exp(-interval / sensors.lag());
    int rows = (int) Math.floor(run.schedule().end() / interval);
    for (int row = 0; row <= rows; row++) {
      double time = row * interval;
      double[] truth = products(time);
      for (int i = 0; i < seen.length; i++) {
        seen[i] = truth[i] + (seen[i] - truth[i]) * kept;
      }
      lines.add(row(start, time, seen, noise));
    }
    return lines;
  }

  private String heading() {
    StringBuilder heading =
        new StringBuilder(
            "time,shelf set (degC),shelf (degC),chamber capacitance (Pa),chamber thermal (Pa),"
                + "collector (degC)");
    for (int i = 1; i <= products(0).length; i++) {
      heading.append(",product ").append(i).append(" (degC)");
    }
    return heading.toString();
  }

  private String row(Instant start, double time, double[] products, Noise noise) {
    CycleMoment moment = at(time);
    double capacitance = Math.min(dryer.gaugeLimit(), noise.pressure(moment.pressure()));
    double thermal =
        noise.pressure(moment.pressure() * (1 + dryer.vaporExcess() * moment.vaporShare()));
    StringBuilder row =
        new StringBuilder(start.plusMillis(Math.round(1_000 * time)).toString())
            .append(',')
            .append(celsius(moment.shelfSetPoint()))
            .append(',')
            .append(celsius(noise.temperature(moment.shelf())))
            .append(',')
            .append(plain(capacitance, 3))
            .append(',')
            .append(plain(Math.min(DryerState.ATMOSPHERE_PA, thermal), 3))
            .append(',')
            .append(celsius(noise.temperature(moment.collector())));
    for (int i = 0; i < products.length; i++) {
      row.append(',').append(celsius(noise.temperature(products[i] + sensors.bias(i))));
    }
    return row.toString();
  }

  private static String celsius(double kelvin) {
    return plain(CELSIUS.fromSi(kelvin), 2);
  }

  private static String plain(double value, int decimals) {
    return Figures.decimals(value, decimals).replace('−', '-');
  }

  private double[] products(double time) {
    return at(time).products().stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** The first moment that is not before {@code time}; steps are as short as a log needs. */
  private CycleMoment at(double time) {
    List<CycleMoment> moments = run.moments();
    int low = 0;
    int high = moments.size() - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (moments.get(middle).time() < time) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return moments.get(low);
  }

  /** Normal deviates in a fixed order. */
  private final class Noise {

    private final SeededUniform uniform;
    private long drawn;

    Noise(long seed) {
      this.uniform = new SeededUniform(seed);
    }

    double temperature(double truth) {
      return sensors.temperatureNoise() == 0 ? truth : truth + sensors.temperatureNoise() * next();
    }

    double pressure(double truth) {
      return sensors.pressureNoise() == 0
          ? truth
          : Math.max(0, truth * (1 + sensors.pressureNoise() * next()));
    }

    private double next() {
      return uniform.normalAt(0, 0, drawn++);
    }
  }
}
