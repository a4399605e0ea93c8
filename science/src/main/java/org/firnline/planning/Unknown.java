package org.firnline.planning;

/** Inputs whose doubt reaches the answer. */
public enum Unknown {
  HEAT_TRANSFER,
  CAKE_RESISTANCE,
  FILL,
  CRITICAL_TEMPERATURE
}
