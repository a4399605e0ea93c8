package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import org.firnline.logs.Log;
import org.firnline.logs.SharedLogs;
import org.junit.jupiter.api.Test;

/** What is known of the shape of a run from outside this project, held against reviews of logs. */
class PublishedShapesTest {
  private final Log log = SharedLogs.read("log01-plain.csv");
  private final Review review = new Reviewer().review(log, ReviewContext.none());

  private Instant at(Endpoint.Method method) {
    return review.endpoints().stream()
        .filter(end -> end.method() == method)
        .findFirst()
        .flatMap(Endpoint::at)
        .orElseThrow();
  }

  /** Ratio about 1.6 in vapor, 1.0 at the end: from memory, common statement of the trade. */
  @Test
  void the_ratio_of_the_gauges_stands_near_one_point_six_in_vapor() {
    ReviewEstimate ratio =
        review.estimates().stream()
            .filter(estimate -> estimate.name().equals("gaugeRatioPlateau"))
            .findFirst()
            .orElseThrow();
    assertThat(ratio.value().orElseThrow().best()).isBetween(1.4, 1.62);
  }

  /**
   * Onset, midpoint and offset are marked on the falling ratio; thermocouples sit in few vials and
   * do not stand for the batch: Patel, Doen and Pikal, AAPS PharmSciTech 11 (2010) 73-84, abstract.
   */
  @Test
  void the_marks_follow_each_other_and_the_thermometers_come_before_the_last() {
    Instant onset = at(Endpoint.Method.GAUGE_RATIO_ONSET);
    Instant midpoint = at(Endpoint.Method.GAUGE_RATIO_MIDPOINT);
    Instant end = at(Endpoint.Method.GAUGE_RATIO_END);
    assertThat(List.of(onset, midpoint, end)).isSorted();
    assertThat(at(Endpoint.Method.PRODUCT_THERMOMETER)).isBefore(end);
  }

  /** A product thermometer meets the shelf when its ice is gone: common practice, no source. */
  @Test
  void dry_product_stands_at_its_shelf() {
    assertThat(review.estimates())
        .filteredOn(estimate -> estimate.name().equals("thermometerOffset"))
        .hasSize(3)
        .allSatisfy(
            offset -> assertThat(offset.value().orElseThrow().best()).isCloseTo(0, within(1.0)));
  }
}
