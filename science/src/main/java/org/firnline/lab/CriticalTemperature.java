package org.firnline.lab;

import org.firnline.evidence.Estimate;
import org.firnline.evidence.InvalidInputException;
import org.firnline.matter.solute.MaterialTemperature;

/**
 * The temperature above which a frozen product loses its structure.
 *
 * @param kind what happens there
 * @param temperature best value in K, spread in K, origin
 */
public record CriticalTemperature(Kind kind, Estimate temperature) {

  /** What happens at the critical temperature. */
  public enum Kind {
    /** Cake flows; seen in a freeze-drying microscope. */
    COLLAPSE,
    /** Glass transition of the maximally freeze-concentrated solution, T_g′. */
    GLASS_TRANSITION,
    /** Eutectic melting of a crystalline solute. */
    EUTECTIC
  }

  public CriticalTemperature {
    Check.that(
        temperature.best() > 150 && temperature.best() < 273.16,
        "critical-temperature-range",
        "critical temperature",
        "critical temperature " + temperature.best() + " K",
        "must lie between 150 K and the melting point of ice, 273.16 K",
        "give for instance -31 °C");
  }

  /**
   * A published limit of frozen product. A temperature that is only called safe is taken as one of
   * collapse.
   *
   * @throws InvalidInputException if the value is one of the dry solid
   */
  public static CriticalTemperature published(MaterialTemperature value) {
    Check.that(
        value.property().limitsPrimaryDrying(),
        "dry-transition",
        "critical temperature",
        "the glass transition of dry " + value.material(),
        "limits secondary drying and storage, not frozen product",
        "use its collapse, eutectic or freeze-concentrated value");
    Kind kind =
        switch (value.property()) {
          case EUTECTIC -> Kind.EUTECTIC;
          case GLASS_TRANSITION -> Kind.GLASS_TRANSITION;
          default -> Kind.COLLAPSE;
        };
    return new CriticalTemperature(kind, value.temperature());
  }
}
