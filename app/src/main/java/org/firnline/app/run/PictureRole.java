package org.firnline.app.run;

import java.util.Optional;
import org.firnline.logs.channel.Role;

/**
 * How a channel looks in the picture of a run.
 *
 * @param color the meaning that has one color in every picture
 * @param pane the pane it is drawn in
 * @param style how the line is drawn
 */
record PictureRole(String color, String pane, String style) {
  static final String TEMPERATURE = "temperature";
  static final String PRESSURE = "pressure";

  private static final String[] PRODUCT_STYLES = {"solid", "dash", "dashdot", "dot"};

  /**
   * The look of a channel; empty for channels that are not drawn.
   *
   * @param nth how many channels of the same role came before it
   */
  static Optional<PictureRole> of(Role role, int nth) {
    String nthStyle = PRODUCT_STYLES[nth % PRODUCT_STYLES.length];
    return Optional.ofNullable(
        switch (role) {
          case SHELF -> new PictureRole("shelf", TEMPERATURE, nthStyle);
          case SHELF_SET_POINT -> new PictureRole("shelf", TEMPERATURE, "dot");
          case PRODUCT, PRODUCT_SURFACE -> new PictureRole("product", TEMPERATURE, nthStyle);
          case COLLECTOR -> new PictureRole("collector", TEMPERATURE, nthStyle);
          case ROOM -> new PictureRole("room", TEMPERATURE, "thin");
          case DEW_POINT -> new PictureRole("other", TEMPERATURE, "dash");
          case PRESSURE, PRESSURE_CAPACITANCE -> new PictureRole("pressure", PRESSURE, nthStyle);
          case PRESSURE_THERMAL -> new PictureRole("pressure", PRESSURE, "dash");
          case PRESSURE_SET_POINT -> new PictureRole("pressure", PRESSURE, "dot");
          case PRESSURE_COLLECTOR -> new PictureRole("collector", PRESSURE, "dash");
          default -> null;
        });
  }
}
