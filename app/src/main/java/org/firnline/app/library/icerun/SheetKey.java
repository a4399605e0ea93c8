package org.firnline.app.library.icerun;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the upper part of an ice-run sheet says, one line each. */
enum SheetKey {
  ICE_RUN(true),
  DRYER(false),
  VESSEL(true),
  OUTER_DIAMETER(false),
  ICE_PER_VESSEL(true),
  CHAMBER_PRESSURE(true),
  TIME(true),
  SHELF_TEMPERATURE(true),
  ICE_TEMPERATURE(false),
  BALANCE_RESOLUTION(true),
  BALANCE_REPEATABILITY(false);

  private final boolean needed;

  SheetKey(boolean needed) {
    this.needed = needed;
  }

  /** Whether a sheet cannot do without it. */
  boolean needed() {
    return needed;
  }

  /** The key as written, such as "shelf temperature". */
  String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Its key in the bundle, such as "shelf-temperature". */
  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Optional<SheetKey> find(String written) {
    String wanted = written.toLowerCase(Locale.ROOT).replaceAll("[ _-]+", " ").replace(":", "");
    return Arrays.stream(values()).filter(key -> key.text().equals(wanted.strip())).findFirst();
  }
}
