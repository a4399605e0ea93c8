package org.firnline.drying.load;

import org.firnline.drying.dryer.VaporPath;

/**
 * Constant settings for a load.
 *
 * @param shelf shelf temperature, K; positive
 * @param pressure how the chamber pressure is set
 * @param path the dryer's way for the vapor
 */
public record LoadSettings(double shelf, PressureControl pressure, VaporPath path) {

  public LoadSettings {
    if (!(shelf > 0)) {
      throw new IllegalArgumentException("shelf temperature " + shelf + " is not positive");
    }
  }
}
