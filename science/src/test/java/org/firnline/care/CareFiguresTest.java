package org.firnline.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.firnline.logs.Log;
import org.firnline.logs.LogReader;
import org.junit.jupiter.api.Test;

/** A log made from closed forms, so that every figure is known beforehand. */
class CareFiguresTest {

  private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");

  /** Pumping rate of the made chamber, 1/s: p = 100 000 e^(−rate (t − 2 h)). */
  private static final double RATE = 0.012;

  private static final double COOLING_S = 900;
  private static final double PUMP_STARTS_S = 7200;
  private static final double END_S = 30 * 3600;

  /** One row every 20 s. */
  private static Log log(boolean gauges) {
    List<String> rows = new ArrayList<>();
    rows.add(
        "time,shelf set (degC),shelf (degC),collector (degC)"
            + (gauges ? ",chamber capacitance (Pa),chamber thermal (Pa)" : ""));
    for (int second = 0; second <= END_S; second += 20) {
      double collector = second < 600 ? 20 : -70 + 90 * Math.exp(-(second - 600) / COOLING_S);
      double wobble = second / 20 % 2 == 0 ? 0.3 : -0.3;
      double pressure =
          second < PUMP_STARTS_S
              ? 100_000
              : second > END_S - 600
                  ? 100_000
                  : Math.max(8, 100_000 * Math.exp(-RATE * (second - PUMP_STARTS_S)));
      boolean dry = second > 0.7 * END_S;
      double thermal = pressure > 1000 ? pressure : pressure * (dry ? 1.04 : 1.6);
      rows.add(
          START.plusSeconds(second)
              + ",-20,"
              + (-20 + wobble)
              + ","
              + Math.round(collector * 1000) / 1000.0
              + (gauges ? "," + pressure + "," + thermal : ""));
    }
    return new LogReader()
        .read("made.csv", String.join("\n", rows).getBytes(StandardCharsets.UTF_8))
        .log()
        .orElseThrow();
  }

  private static Map<CareFigure, Double> figures(Log log) {
    return CareFigures.of(log).stream()
        .collect(Collectors.toMap(CarePoint::figure, CarePoint::value));
  }

  @Test
  void readsThePumpDownCurve() {
    Map<CareFigure, Double> figures = figures(log(true));
    assertThat(figures.get(CareFigure.PUMPING_RATE)).isCloseTo(RATE, within(0.01 * RATE));
    assertThat(figures.get(CareFigure.PUMP_DOWN))
        .isCloseTo(Math.log(0.9 * 100_000 / 100) / RATE, within(5.0));
    assertThat(figures.get(CareFigure.ULTIMATE_PRESSURE)).isCloseTo(8, within(0.1));
  }

  /** From 18 °C, two kelvin below the start, to −65 °C: τ ln(88/5). */
  @Test
  void readsTheCollector() {
    Map<CareFigure, Double> figures = figures(log(true));
    assertThat(figures.get(CareFigure.COLLECTOR_COLDEST)).isCloseTo(203.15, within(0.05));
    assertThat(figures.get(CareFigure.COLLECTOR_COOLING))
        .isCloseTo(COOLING_S * Math.log(88.0 / 5), within(45.0));
  }

  @Test
  void readsBothGaugesInVaporAndDry() {
    Map<CareFigure, Double> figures = figures(log(true));
    assertThat(figures.get(CareFigure.VAPOR_RATIO)).isCloseTo(1.6, within(0.01));
    assertThat(figures.get(CareFigure.GAUGE_AGREEMENT)).isCloseTo(1.04, within(0.01));
  }

  @Test
  void readsHowTheShelfFollows() {
    assertThat(figures(log(true)).get(CareFigure.SHELF_TRACKING)).isCloseTo(0.3, within(0.01));
  }

  @Test
  void leavesOutWhatTheLogDoesNotShow() {
    assertThat(figures(log(false)))
        .containsOnlyKeys(
            CareFigure.COLLECTOR_COLDEST, CareFigure.COLLECTOR_COOLING, CareFigure.SHELF_TRACKING);
  }
}
