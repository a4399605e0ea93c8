package org.firnline.review;

/** What a finding is about. The label is the stable name in answers for machines. */
public enum FindingKind {
  PRODUCT_TOO_WARM("product above critical temperature"),
  SHELF_OVERSHOOT("shelf overshoot"),
  VACUUM_LEAK("vacuum leak"),
  RATIO_FALL_IS_NOT_THE_END("ratio fall is not the end of drying"),
  PORT_OPENED("port opened"),
  VACUUM_LOST("vacuum lost"),
  PRESSURE_FLOATS("pressure above set point"),
  COLLECTOR_WARMING("collector warming"),
  POWER_CUT("power cut or logger stop"),
  GAP("gap in the log"),
  CLOCK_CHANGED("clock changed"),
  SENSOR_DEAD("sensor failed"),
  SENSOR_DRIFT("sensor drifts"),
  SENSOR_OFFSET("sensor offset"),
  GAUGES_DISAGREE("gauges disagree"),
  SINGLE_GAUGE("no second gauge"),
  GAUGE_TOO_COARSE("gauge too coarse for an endpoint"),
  PROBED_VESSELS_DRY_FIRST("probed vessels dry before the rest"),
  SECONDARY_BEFORE_END("heat raised before the ice was gone"),
  PRESSURE_RISE_TEST("pressure-rise test"),
  NOT_AS_PLANNED("not as planned"),
  END_NOT_REACHED("end of drying not seen");

  private final String label;

  FindingKind(String label) {
    this.label = label;
  }

  /** The words shown to people and used in answers for machines. */
  public String label() {
    return label;
  }
}
