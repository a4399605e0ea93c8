package org.firnline.logs;

import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Channel;
import org.firnline.logs.channel.Role;
import org.firnline.logs.channel.Series;

/**
 * Looks whether the roles and units that were found can be true together on a dryer; what cannot is
 * reported as likely swapped channels or a wrong unit.
 */
final class PhysicalChecks {
  private static final double MOST = 0.6;
  private static final double UNDER_VACUUM_PA = 1000;
  private static final double ABOVE_SHELF_K = 3;

  /** No weather and no valley gives more: 120 kPa. */
  private static final double HIGHEST_ATMOSPHERE_PA = 120_000;

  private final ReadingNotes notes;

  PhysicalChecks(ReadingNotes notes) {
    this.notes = notes;
  }

  void check(List<Channel> channels) {
    Optional<Channel> shelf = first(channels, Role.SHELF);
    Optional<Channel> collector = first(channels, Role.COLLECTOR);
    Optional<Channel> gauge =
        channels.stream().filter(channel -> channel.role().isChamberPressure()).findFirst();
    if (shelf.isPresent() && collector.isPresent()) {
      collectorBelowShelf(collector.get(), shelf.get());
    }
    for (Channel channel : channels) {
      if (channel.role().isChamberPressure()) {
        belowAtmosphere(channel);
      }
      boolean probe = channel.role() == Role.PRODUCT;
      if (probe && shelf.isPresent() && gauge.isPresent()) {
        productBelowShelf(channel, shelf.get(), gauge.get());
      }
    }
  }

  private static Optional<Channel> first(List<Channel> channels, Role role) {
    return channels.stream().filter(channel -> channel.role() == role).findFirst();
  }

  private void collectorBelowShelf(Channel collector, Channel shelf) {
    Series cold = collector.series();
    Series warm = shelf.series();
    int against = 0;
    int both = 0;
    for (int i = 0; i < cold.size(); i++) {
      double difference = cold.value(i) - warm.value(i);
      both += Double.isNaN(difference) ? 0 : 1;
      against += difference > 0 ? 1 : 0;
    }
    if (both > 0 && against > MOST * both) {
      contradiction(
          "the collector \""
              + collector.name()
              + "\" is warmer than the shelf \""
              + shelf.name()
              + "\" most of the time",
          "the two channels may be swapped");
    }
  }

  private void belowAtmosphere(Channel gauge) {
    Series series = gauge.series();
    int above = 0;
    for (int i = 0; i < series.size(); i++) {
      above += series.value(i) > HIGHEST_ATMOSPHERE_PA ? 1 : 0;
    }
    if (above > 0) {
      contradiction(
          "the pressure \"" + gauge.name() + "\" stands above any atmosphere in " + above + " rows",
          "its unit is likely not " + (gauge.unit().isEmpty() ? "the assumed one" : gauge.unit()));
    }
  }

  private void productBelowShelf(Channel product, Channel shelf, Channel gauge) {
    int against = 0;
    int both = 0;
    for (int i = 0; i < product.series().size(); i++) {
      double difference = product.series().value(i) - shelf.series().value(i);
      if (gauge.series().value(i) < UNDER_VACUUM_PA && !Double.isNaN(difference)) {
        both++;
        against += difference > ABOVE_SHELF_K ? 1 : 0;
      }
    }
    if (both > 0 && against > MOST * both) {
      contradiction(
          "the product \""
              + product.name()
              + "\" stands above the shelf most of the time under "
              + "vacuum",
          "it may be another channel, or one of the two has another unit");
    }
  }

  private void contradiction(String what, String advice) {
    notes.problem(
        "logs.contradiction", what, "on a dryer this cannot be for long", advice + "; check both");
  }
}
