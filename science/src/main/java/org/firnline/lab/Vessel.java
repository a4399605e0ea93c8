package org.firnline.lab;

/** One container of product. Its kinds differ in how heat reaches the ice and vapor leaves it. */
public sealed interface Vessel permits Vial, Tray, Flask, Piece {

  /** What people call it, such as {@code 10R}. */
  String name();

  /** The greatest volume of liquid (or of a whole piece) that it can be dried with, m3. */
  double largestFill();

  /**
   * Why no more than {@link #largestFill()} goes in, as the end of a sentence that starts with the
   * fill volume.
   */
  String fillRule();

  /**
   * How far the front moves through {@code frozenVolume_m3} in this vessel, m.
   *
   * @param frozenVolume_m3 volume of the frozen product, positive
   */
  double frozenThickness(double frozenVolume_m3);

  /** The answer of the case that fits this kind of vessel. */
  <T> T fold(Cases<T> cases);

  /**
   * One answer for each kind of vessel.
   *
   * @param <T> type of the answer
   */
  interface Cases<T> {

    T vial(Vial vial);

    T tray(Tray tray);

    T flask(Flask flask);

    T piece(Piece piece);
  }
}
