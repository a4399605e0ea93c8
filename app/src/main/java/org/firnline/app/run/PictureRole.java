package org.firnline.app.run;

import java.util.Optional;
import org.firnline.logs.channel.Dimension;
import org.firnline.logs.channel.Role;

/**
 * How a channel looks in the picture of a run.
 *
 * @param color the meaning that has one color in every picture
 * @param pane the pane it is drawn in
 * @param style how the line is drawn
 */
record PictureRole(String color, PicturePane pane, String style) {
  private static final String[] STYLES = {"solid", "dash", "dashdot", "dot"};

  /**
   * The look of a channel; empty for channels that are not drawn.
   *
   * @param nth how many channels of the same role came before it
   */
  static Optional<PictureRole> of(Role role, int nth) {
    String nthStyle = STYLES[nth % STYLES.length];
    return Optional.ofNullable(
        switch (role) {
          case SHELF -> new PictureRole("shelf", PicturePane.TEMPERATURE, nthStyle);
          case SHELF_SET_POINT -> new PictureRole("shelf", PicturePane.TEMPERATURE, "dot");
          case PRODUCT, PRODUCT_SURFACE ->
              new PictureRole("product", PicturePane.TEMPERATURE, nthStyle);
          case COLLECTOR -> new PictureRole("collector", PicturePane.TEMPERATURE, nthStyle);
          case ROOM -> new PictureRole("room", PicturePane.TEMPERATURE, "thin");
          case DEW_POINT -> new PictureRole("other", PicturePane.TEMPERATURE, "dash");
          case PRESSURE, PRESSURE_CAPACITANCE ->
              new PictureRole("pressure", PicturePane.PRESSURE, nthStyle);
          case PRESSURE_THERMAL -> new PictureRole("pressure", PicturePane.PRESSURE, "dash");
          case PRESSURE_SET_POINT -> new PictureRole("pressure", PicturePane.PRESSURE, "dot");
          case PRESSURE_COLLECTOR -> new PictureRole("collector", PicturePane.PRESSURE, "dash");
          case WEIGHT -> new PictureRole("product", PicturePane.WEIGHT, nthStyle);
          case VAPOR_RATE -> new PictureRole("other", PicturePane.RATE, nthStyle);
          default -> null;
        });
  }

  /** The look of a channel nobody has named yet, drawn where there is nothing else to draw. */
  static Optional<PictureRole> ofUnnamed(Role role, int nth) {
    return role == Role.UNKNOWN && role.dimension() != Dimension.TEXT
        ? Optional.of(new PictureRole("other", PicturePane.UNNAMED, STYLES[nth % STYLES.length]))
        : Optional.empty();
  }
}
