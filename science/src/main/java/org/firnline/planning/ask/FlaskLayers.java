package org.firnline.planning.ask;

import org.firnline.numerics.Root;
import org.firnline.planning.Verdict;

/**
 * What is in a round flask, frozen on its wall or frozen as it stood.
 *
 * <p>The flask is taken as a sphere of its brimful volume. Shell: an even layer over a share of the
 * wall. Puddle: a cap at the bottom. Both volumes are those of the frozen product.
 *
 * <p>Source: geometry of sphere and spherical cap; derived.
 *
 * @param frozenVolume m3; positive, at most half of the flask
 * @param flaskVolume brimful, m3; positive
 * @param wallShare share of the wall that the shell covers; above 0 to 1
 */
public record FlaskLayers(double frozenVolume, double flaskVolume, double wallShare) {

  /** Share of the wall a bottle turned by hand covers; common practice, no published source. */
  public static final double USUAL_WALL_SHARE = 2.0 / 3;

  /**
   * Layers below 10 mm are preferred, 20 mm is the upper limit. Source: a published standard
   * operating procedure and an equipment maker's manual (found).
   */
  private static final double PREFERRED_M = 0.010;

  private static final double MOST_M = 0.020;

  public FlaskLayers {
    Given.positive(frozenVolume, "frozen volume", "m3");
    Given.positive(flaskVolume, "flask volume", "m3");
    Given.that(
        frozenVolume <= flaskVolume / 2,
        "frozen volume",
        "a frozen volume of " + frozenVolume * 1e6 + " mL in a flask of " + flaskVolume * 1e6,
        "fills more than half of the flask",
        "take a flask two to three times as large as the sample");
    Given.that(
        wallShare > 0 && wallShare <= 1,
        "share of the wall",
        "share of the wall " + wallShare,
        "must lie above 0 and at most 1",
        "give for instance 67 %");
    double shell = wallShare * flaskVolume;
    Given.that(
        frozenVolume < shell,
        "share of the wall",
        "a shell on " + wallShare + " of the wall",
        "does not hold the sample",
        "cover more of the wall or take a larger flask");
  }

  /** Inner radius of the flask, m. */
  public double radius() {
    return Math.cbrt(3 * flaskVolume / (4 * Math.PI));
  }

  /** Frozen on the wall. */
  public IceLayer shell() {
    double radius = radius();
    double inside = Math.cbrt(radius * radius * radius * (1 - frozenVolume / room()));
    double sphere = 4 * Math.PI * wallShare;
    return new IceLayer(
        frozenVolume, radius - inside, sphere * radius * radius, sphere * inside * inside);
  }

  /** Frozen as it stood. */
  public IceLayer puddle() {
    double radius = radius();
    double depth =
        Root.find(
            h -> Math.PI * h * h * (3 * radius - h) / 3 - frozenVolume, 0, radius * (1 + 1e-9));
    double free = Math.PI * depth * (2 * radius - depth);
    return new IceLayer(frozenVolume, depth, 2 * Math.PI * radius * depth, free);
  }

  /** Heated area of the shell over that of the puddle: so much faster where heat decides. */
  public double gain() {
    return shell().heatArea() / puddle().heatArea();
  }

  /** What the shell's thickness says. */
  public Verdict shellVerdict() {
    return verdict(shell().thickness());
  }

  /** What the puddle's depth says. */
  public Verdict puddleVerdict() {
    return verdict(puddle().thickness());
  }

  /** Whether a layer of {@code thickness_m} dries in fair time. */
  public static Verdict verdict(double thickness_m) {
    return thickness_m > MOST_M
        ? Verdict.STOP
        : thickness_m > PREFERRED_M ? Verdict.WATCH : Verdict.PASS;
  }

  private double room() {
    return wallShare * flaskVolume;
  }
}
