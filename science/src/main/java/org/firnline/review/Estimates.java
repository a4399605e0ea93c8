package org.firnline.review;

import java.util.ArrayList;
import java.util.List;
import org.firnline.evidence.Band;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.matter.WagnerEtAl2011Ice;
import org.firnline.review.signal.Signal;

/**
 * What a log alone determines: sensors against each other, vapor and water, the collector's margin,
 * the ice under a pressure-rise test. Heat transfer and cake resistance need the vessel and its
 * fill too and are left to learning.
 */
final class Estimates {
  private static final double NINE_IN_TEN = 1.645;
  private static final double LEVEL_S = 1800;

  private final Facts facts;
  private final List<ReviewEstimate> found = new ArrayList<>();

  private Estimates(Facts facts) {
    this.facts = facts;
  }

  static List<ReviewEstimate> of(Facts facts) {
    Estimates estimates = new Estimates(facts);
    estimates.gaugeRatio();
    estimates.shelfControl();
    estimates.thermometers();
    estimates.vapor();
    estimates.weights();
    estimates.collectorMargin();
    estimates.ice();
    estimates.leftToLearning();
    return List.copyOf(estimates.found);
  }

  private void gaugeRatio() {
    facts
        .ratio()
        .filter(GaugeRatio.Ratio::hasPlateau)
        .ifPresent(
            ratio ->
                found.add(
                    ReviewEstimate.of(
                        "gaugeRatioPlateau",
                        ratio.channels(),
                        "1",
                        ratio.plateau(),
                        NINE_IN_TEN * ratio.noise() * (ratio.plateau() - 1)
                            + 0.01 * (ratio.plateau() - 1),
                        ReviewWords.say("estimate.ratio"))));
  }

  /** Shelf less set point while the shelf holds in primary drying. */
  private void shelfControl() {
    var shelf = facts.run().first(Role.SHELF);
    var set = facts.run().first(Role.SHELF_SET_POINT);
    int to = facts.timeline().secondary();
    int from = (facts.timeline().working() + to) / 2;
    if (shelf.isEmpty() || set.isEmpty()) {
      return;
    }
    Signal off = shelf.get().signal().with(set.get().signal(), (s, target) -> s - target);
    spread("shelfOffset", shelf.get().name(), off, from, to, "estimate.shelf");
  }

  /** Thermometers less shelf where both must agree: at the end of secondary drying. */
  private void thermometers() {
    var shelf = facts.run().first(Role.SHELF);
    int to = facts.timeline().vented();
    int from = to - facts.grid().steps(LEVEL_S);
    boolean dried = facts.timeline().secondary() < from;
    if (shelf.isEmpty() || !dried) {
      return;
    }
    for (Trace trace : facts.run().all(Role.PRODUCT)) {
      Signal off = trace.signal().with(shelf.get().signal(), (product, plate) -> product - plate);
      spread("thermometerOffset", trace.name(), off, from, to, "estimate.thermometer");
    }
  }

  private void spread(String name, String about, Signal off, int from, int to, String key) {
    if (off.goodIn(from, to) >= 3) {
      found.add(
          new ReviewEstimate(
              name,
              about,
              "K",
              java.util.Optional.of(
                  new Band(
                      off.quantileIn(from, to, 0.05),
                      off.medianIn(from, to),
                      off.quantileIn(from, to, 0.95))),
              ReviewWords.say(key)));
    }
  }

  /** Peak and sum of a measured vapor rate; noise averages out, the meter's own doubt does not. */
  private void vapor() {
    var rate = facts.run().first(Role.VAPOR_RATE);
    if (rate.isEmpty()) {
      return;
    }
    Signal signal = rate.get().signal().median(5);
    int from = facts.timeline().working();
    int to = facts.timeline().secondary();
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += Double.isNaN(signal.at(i)) ? 0 : signal.at(i) * facts.grid().step_s();
    }
    double peak = signal.quantileIn(from, to, 0.995);
    String meter = ReviewWords.say("estimate.vapor");
    found.add(ReviewEstimate.of("vaporLoad", rate.get().name(), "kg", sum, 0.1 * sum, meter));
    found.add(ReviewEstimate.of("peakRate", rate.get().name(), "kg/s", peak, 0.1 * peak, meter));
  }

  private void weights() {
    for (Channel channel : facts.run().log().channels()) {
      if (channel.role() == Role.WEIGHT) {
        WeightEnd.lost(facts.run().log(), channel)
            .ifPresent(
                lost ->
                    found.add(
                        ReviewEstimate.of(
                            "waterLost",
                            channel.name(),
                            "kg",
                            lost[0],
                            lost[1],
                            ReviewWords.say("estimate.weight"))));
      }
    }
  }

  /**
   * Chamber pressure over the vapor pressure of ice at the collector: 1 means it can take no more.
   */
  private void collectorMargin() {
    var collector = facts.run().first(Role.COLLECTOR);
    var gauge = facts.run().truestGauge();
    int from = facts.timeline().working() + facts.grid().steps(LEVEL_S);
    int to = facts.timeline().secondary();
    if (collector.isEmpty() || gauge.isEmpty() || to - from < 3) {
      return;
    }
    var ice = new WagnerEtAl2011Ice();
    Signal margin =
        gauge
            .get()
            .signal()
            .with(
                collector.get().signal().median(5),
                (pressure, kelvin) ->
                    kelvin > 150 && kelvin < 273 ? pressure / ice.pressure(kelvin) : Double.NaN);
    if (margin.goodIn(from, to) >= 3) {
      found.add(
          new ReviewEstimate(
              "collectorMargin",
              collector.get().name(),
              "1",
              java.util.Optional.of(
                  new Band(
                      margin.quantileIn(from, to, 0.05),
                      margin.medianIn(from, to),
                      margin.quantileIn(from, to, 0.95))),
              ReviewWords.say("estimate.collector")));
    }
  }

  private void ice() {
    for (RiseTests.RiseTest test : facts.riseTests()) {
      String at = Spoken.into(facts.grid().second(test.rise().start()));
      test.tendsTo_Pa()
          .ifPresentOrElse(
              level ->
                  found.add(
                      ReviewEstimate.of(
                          "iceVaporPressure",
                          at,
                          "Pa",
                          level,
                          0.1 * level,
                          ReviewWords.say(
                              "estimate.ice",
                              Spoken.temperature(
                                  new WagnerEtAl2011Ice()
                                      .saturationTemperature(Math.min(level, 611)))))),
              () ->
                  found.add(
                      ReviewEstimate.unknown(
                          "iceVaporPressure", at, "Pa", ReviewWords.say("estimate.ice.coarse"))));
    }
  }

  private void leftToLearning() {
    String why = ReviewWords.say("estimate.learning");
    found.add(ReviewEstimate.unknown("heatTransferCoefficient", "vessel", "W/(m2 K)", why));
    found.add(ReviewEstimate.unknown("cakeResistance", "product", "m/s", why));
  }
}
