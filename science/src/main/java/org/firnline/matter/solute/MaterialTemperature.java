package org.firnline.matter.solute;

import org.firnline.evidence.Estimate;

/**
 * A temperature at which a material changes, as one publication gives it.
 *
 * @param material plain name, such as {@code sucrose}
 * @param category kind of material
 * @param property what happens there
 * @param condition what the publication says about the sample
 * @param temperature best value in K, spread in K, origin
 */
public record MaterialTemperature(
    String material, Category category, Property property, String condition, Estimate temperature) {

  /** Kinds of material. */
  public enum Category {
    SOLUTE,
    FOOD,
    BIOLOGICAL
  }

  /** What happens at a published temperature. */
  public enum Property {
    /** The drying cake flows; seen in a freeze-drying microscope. */
    COLLAPSE(true),
    /** Glass transition of the maximally freeze-concentrated solution, T_g′. */
    GLASS_TRANSITION(true),
    /** A crystalline solute melts together with ice. */
    EUTECTIC(true),
    /** The warmest product a maker or handbook calls safe, whatever the reason. */
    SAFE(true),
    /** Glass transition of the dry solid; a limit for storage and secondary drying. */
    DRY_GLASS_TRANSITION(false);

    private final boolean limitsPrimaryDrying;

    Property(boolean limitsPrimaryDrying) {
      this.limitsPrimaryDrying = limitsPrimaryDrying;
    }

    /** Whether frozen product must stay below it. */
    public boolean limitsPrimaryDrying() {
      return limitsPrimaryDrying;
    }
  }
}
