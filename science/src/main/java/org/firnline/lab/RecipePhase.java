package org.firnline.lab;

/** The phases of a recipe, in their order. */
public enum RecipePhase {
  FREEZING("freezing", false),
  EVACUATION("evacuation", true),
  PRIMARY_DRYING("primary drying", true),
  SECONDARY_DRYING("secondary drying", true),
  BACKFILL("backfill", true);

  private final String label;
  private final boolean underVacuum;

  RecipePhase(String label, boolean underVacuum) {
    this.label = label;
    this.underVacuum = underVacuum;
  }

  /** The words shown to people and used in answers for machines. */
  public String label() {
    return label;
  }

  /** Whether a chamber pressure may be asked for in this phase. */
  public boolean underVacuum() {
    return underVacuum;
  }
}
