package org.firnline.lab;

import java.util.function.Function;
import org.firnline.evidence.Estimate;
import org.firnline.evidence.Provenance;
import org.firnline.evidence.Source;

/**
 * A glass flask on a port of a manifold, warmed by the air of the room.
 *
 * @param name what people call it; not blank
 * @param volume brimful volume, m3; positive
 * @param form where the product is frozen in it
 * @param wallThickness of the glass, m; positive
 * @param glassConductivity W/(m K); positive
 * @param roomHeatTransfer from the room to the outer glass, frost included, W/(m2 K)
 * @param portResistance of port, valve and filter to vapor, Pa s/kg; best 0 or more
 */
public record Flask(
    String name,
    double volume,
    Form form,
    double wallThickness,
    double glassConductivity,
    Estimate roomHeatTransfer,
    Estimate portResistance)
    implements Vessel {

  /** Conductivity of borosilicate glass, W/(m K). Source: handbook value (from memory). */
  public static final double BOROSILICATE_CONDUCTIVITY = 1.1;

  /**
   * Free convection and radiation from a room to a frosted flask, W/(m2 K). Source: heat-transfer
   * handbooks, 5 to 10 (from memory).
   */
  public static final Estimate TYPICAL_ROOM_HEAT_TRANSFER =
      new Estimate(
          7,
          1.5,
          new Provenance.Published(
              new Source(
                  "heat-transfer handbooks, free convection and radiation at a cold flask, 5 to 10 W/(m2 K)",
                  Source.Status.FROM_MEMORY)));

  /** Where the product is frozen. */
  public sealed interface Form {

    /**
     * Spread over the inner wall by turning the flask in a cold bath: the front moves outward.
     *
     * @param wallRadius inner radius of the glass, m; positive
     * @param height of the frozen cylinder, m; positive
     */
    record Shell(double wallRadius, double height) implements Form {

      public Shell {
        Check.positive(wallRadius, "inner radius of the flask", "m");
        Check.positive(height, "height of the frozen shell", "m");
      }

      @Override
      public double thickness(double frozenVolume_m3) {
        double free = wallRadius * wallRadius - frozenVolume_m3 / (Math.PI * height);
        Check.that(
            free > 0,
            "shell-too-thick",
            "fill volume",
            "a frozen volume of " + Check.milliliters(frozenVolume_m3),
            "fills the whole flask wall",
            "use a larger flask or divide the sample");
        return wallRadius - Math.sqrt(free);
      }

      @Override
      public <T> T fold(Function<Shell, T> shell, Function<Puddle, T> puddle) {
        return shell.apply(this);
      }
    }

    /**
     * Frozen as it stood, a flat layer at the bottom: the front moves down.
     *
     * @param area of the layer, m2; positive
     */
    record Puddle(double area) implements Form {

      public Puddle {
        Check.positive(area, "area of the frozen puddle", "m2");
      }

      @Override
      public double thickness(double frozenVolume_m3) {
        return frozenVolume_m3 / area;
      }

      @Override
      public <T> T fold(Function<Shell, T> shell, Function<Puddle, T> puddle) {
        return puddle.apply(this);
      }
    }

    /** Thickness of {@code frozenVolume_m3} of product in this form, m. */
    double thickness(double frozenVolume_m3);

    /** The answer of the function that fits this form. */
    <T> T fold(Function<Shell, T> shell, Function<Puddle, T> puddle);
  }

  public Flask {
    Check.named(name, "flask name");
    Check.positive(volume, "volume of the flask", "m3");
    Check.positive(wallThickness, "wall thickness of the flask", "m");
    Check.positive(glassConductivity, "glass conductivity", "W/(m K)");
    Check.positive(roomHeatTransfer.best(), "heat transfer from the room", "W/(m2 K)");
    Check.notNegative(portResistance.best(), "port resistance", "Pa s/kg");
  }

  /** Half of the brimful volume; makers of flasks print one third to one half. */
  @Override
  public double largestFill() {
    return volume / 2;
  }

  @Override
  public String fillRule() {
    return "leaves no room to freeze it in a layer";
  }

  @Override
  public double frozenThickness(double frozenVolume_m3) {
    return form.thickness(frozenVolume_m3);
  }

  @Override
  public <T> T fold(Cases<T> cases) {
    return cases.flask(this);
  }
}
