package org.firnline.drying.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.firnline.drying.load.DryingLoad;
import org.firnline.drying.load.VesselGroup;
import org.firnline.drying.primary.DryingVessel;
import org.firnline.drying.primary.FastPrimaryDrying;
import org.firnline.drying.primary.ShelfHeat;
import org.firnline.drying.primary.Slab;
import org.firnline.lab.CakeResistance;
import org.firnline.lab.HeatTransfer;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadSamplingTest {

  private static final double SHELF = 253.15;
  private static final double PRESSURE = 10;
  private static final HeatTransfer TUBING = new HeatTransfer(10, 1.04, 0.0231);

  private static final Variation USUAL =
      new Variation(new Spread(0.05, 0.1, 0), new Spread(0.06, 0.12, 0.01));

  private static VesselGroup vials(int count, double position) {
    var slab = new Slab(0.0029055750000000005, 0.008589174483798324, 3.801e-4, 4.524e-4, 2.3);
    var vessel = new DryingVessel(slab, new CakeResistance(48000, 4.8e7, 0), 0);
    return new VesselGroup(count, vessel, ShelfHeat.of(TUBING.times(position)));
  }

  /**
   * 140 center, 50 edge, 10 corner vials. Expected values from 1600 pseudo-random runs of an
   * independent reference model; tolerances are four standard errors of that reference.
   */
  @Nested
  class TwoHundredVials {

    private static final SampledRuns RUNS =
        new LoadSampling(USUAL, 4096, 20_261_125)
            .run(
                new DryingLoad(List.of(vials(140, 1), vials(50, 1.25), vials(10, 1.45))),
                SHELF,
                PRESSURE);

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
      "last, 0.05, 93412.38541226841, 0.010957431230690182",
      "last, 0.5, 101593.05766656701, 0.007072238303310976",
      "last, 0.95, 111494.55596418002, 0.008759673552477504",
      "median, 0.05, 78348.40942374263, 0.012727549257372621",
      "median, 0.5, 84556.13692418297, 0.00590207144926884",
      "median, 0.95, 91430.64247372159, 0.009572331235703176",
      "first, 0.05, 58027.69555247591, 0.0108077716677491",
      "first, 0.5, 63596.66079589045, 0.008439226547018862",
      "first, 0.95, 70045.19627759562, 0.008189087266409106",
      "warmest, 0.05, 245.64922981570035, 0.00032679447409722035",
      "warmest, 0.5, 246.40879730241608, 0.0003721515294902153",
      "warmest, 0.95, 247.21250356592464, 0.0003338698165677245",
      "ninetyFivePercent, 0.5, 94900.01675435425, 0.0076105988744039725"
    })
    void meetsTheReference(String figure, double share, double expected, double relative) {
      ToDoubleFunction<SampledRun> read =
          switch (figure) {
            case "last" -> SampledRun::last;
            case "median" -> SampledRun::median;
            case "first" -> SampledRun::first;
            case "warmest" -> SampledRun::warmest;
            default -> SampledRun::ninetyFivePercent;
          };
      assertThat(RUNS.quantile(read).at(share)).isCloseTo(expected, within(relative * expected));
    }

    @Test
    void meetsTheProbabilityOfGettingTooWarm() {
      assertThat(RUNS.probabilityWarmestOver(246.5))
          .isCloseTo(0.43625, within(0.1656943529490081 * 0.43625));
    }
  }

  @Nested
  class Laws {

    private final DryingLoad load = new DryingLoad(List.of(vials(20, 1), vials(5, 1.3)));
    private final LoadSampling sampling = new LoadSampling(USUAL, 64, 7);

    @Test
    void oneThreadAndManyGiveTheSameBits() {
      SampledRuns many = sampling.run(load, SHELF, PRESSURE);
      SampledRuns one = sampling.run(load, SHELF, PRESSURE, IntStream.range(0, 64));
      assertThat(many).isEqualTo(one);
    }

    @Test
    void anotherSeedGivesAnotherAnswer() {
      assertThat(new LoadSampling(USUAL, 64, 8).run(load, SHELF, PRESSURE))
          .isNotEqualTo(sampling.run(load, SHELF, PRESSURE));
    }

    @Test
    void withoutVariationEveryRunIsTheTypicalOne() {
      var none = new LoadSampling(new Variation(Spread.NONE, Spread.NONE), 4, 1);
      SampledRuns runs = none.run(DryingLoad.of(vials(3, 1)), SHELF, PRESSURE);
      VesselGroup typical = vials(1, 1);
      double time =
          FastPrimaryDrying.run(typical.vessel(), typical.heat().at(SHELF, PRESSURE), PRESSURE)
              .time();
      assertThat(runs.runs()).allMatch(run -> run.first() == time && run.last() == time);
    }

    @Test
    void aMeltingVesselCountsAsTooWarmAndNeverDry() {
      SampledRuns runs = sampling.run(DryingLoad.of(vials(3, 1)), 400, 100);
      assertThat(runs.probabilityWarmestOver(273)).isEqualTo(1);
      assertThat(runs.band(SampledRun::last).best()).isInfinite();
    }
  }
}
