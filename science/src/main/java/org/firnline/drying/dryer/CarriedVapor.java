package org.firnline.drying.dryer;

import java.util.Optional;

/**
 * The greatest vapor flow of a dryer at one chamber pressure.
 *
 * @param rate kg/s; infinite where nothing limits
 * @param limitedBy the part of the dryer that allows no more
 * @param subsonic whether the duct is so near the collector pressure that it no longer chokes; the
 *     figure is then an upper bound of less certainty
 */
public record CarriedVapor(double rate, VaporLimit.Part limitedBy, boolean subsonic) {

  /** What a careful reader should know about this figure, if anything. */
  public Optional<String> warning() {
    return subsonic
        ? Optional.of(
            "the chamber pressure is less than about 1.85 times the collector's: the duct does not "
                + "choke, its flow hangs on the collector temperature and is an upper bound")
        : Optional.empty();
  }
}
