package org.firnline.logs.channel;

/** What a channel measures, in the words of the trade. */
public enum Role {
  SHELF("shelf", Dimension.TEMPERATURE),
  SHELF_SET_POINT("shelf set point", Dimension.TEMPERATURE),
  PRODUCT("product", Dimension.TEMPERATURE),
  /** A thermometer outside on the glass of a flask: it sees the wall, not the ice. */
  PRODUCT_SURFACE("product surface", Dimension.TEMPERATURE),
  PRESSURE_CAPACITANCE("pressure, capacitance", Dimension.PRESSURE),
  PRESSURE_THERMAL("pressure, thermal gauge", Dimension.PRESSURE),
  /** A chamber pressure whose gauge kind the file does not tell. */
  PRESSURE("pressure", Dimension.PRESSURE),
  PRESSURE_SET_POINT("pressure set point", Dimension.PRESSURE),
  /** A gauge on the collector's chamber, not on the load's. */
  PRESSURE_COLLECTOR("collector pressure", Dimension.PRESSURE),
  COLLECTOR("collector", Dimension.TEMPERATURE),
  ROOM("room", Dimension.TEMPERATURE),
  DEW_POINT("dew point", Dimension.TEMPERATURE),
  VAPOR_RATE("vapor rate", Dimension.MASS_RATE),
  WEIGHT("weight", Dimension.MASS),
  /** States, events and comments in words. */
  MESSAGE("message", Dimension.TEXT),
  STEP_NUMBER("step number", Dimension.NUMBER),
  /** A status word whose bits mean something only the source's profile knows. */
  STATUS("status", Dimension.NUMBER),
  RECORD_NUMBER("record number", Dimension.NUMBER),
  /** Read and kept, but not used: a person said so, or it is known not to matter. */
  IGNORED("ignored", Dimension.UNKNOWN),
  /** Read and kept; a question asks what it is. */
  UNKNOWN("unknown", Dimension.UNKNOWN);

  private final String label;
  private final Dimension dimension;

  Role(String label, Dimension dimension) {
    this.label = label;
    this.dimension = dimension;
  }

  /** The words shown to people and used in answers for machines. */
  public String label() {
    return label;
  }

  /** The kind of quantity a channel in this role holds. */
  public Dimension dimension() {
    return dimension;
  }

  /** Whether this is a gauge on the load's chamber (a set point is not). */
  public boolean isChamberPressure() {
    return this == PRESSURE || this == PRESSURE_CAPACITANCE || this == PRESSURE_THERMAL;
  }

  /** Whether this thermometer belongs to one vessel of the load. */
  public boolean isVesselThermometer() {
    return this == PRODUCT || this == PRODUCT_SURFACE;
  }
}
