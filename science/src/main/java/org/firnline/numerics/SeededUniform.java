package org.firnline.numerics;

/**
 * Pseudo-random numbers without a state: the number at a place is always the same, in whatever
 * order and on however many threads it is asked for.
 *
 * <p>Source: finalizer of SplitMix64, Steele, Lea &amp; Flood, OOPSLA 2014 (constants from memory;
 * the same that {@link java.util.SplittableRandom} uses), applied to seed and place in turn.
 *
 * @param seed any
 */
public record SeededUniform(long seed) {

  private static final long GOLDEN = 0x9e3779b97f4a7c15L;

  /** A number above 0 and below 1 that belongs to this place. */
  public double at(long first, long second, long third) {
    long mixed = mix(seed + GOLDEN);
    mixed = mix(mixed + GOLDEN * (first + 1));
    mixed = mix(mixed + GOLDEN * (second + 1));
    mixed = mix(mixed + GOLDEN * (third + 1));
    return ((mixed >>> 12) + 0.5) * 0x1p-52;
  }

  /** A standard normal number that belongs to this place. */
  public double normalAt(long first, long second, long third) {
    return Normal.quantile(at(first, second, third));
  }

  private static long mix(long value) {
    long z = value;
    z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
    z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
    return z ^ (z >>> 31);
  }
}
