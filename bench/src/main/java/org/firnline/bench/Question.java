package org.firnline.bench;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a benchmark class wants to know. Such a class has two benchmark methods: {@code firnline}
 * and {@code baseline}, which do the same work on the same inputs.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Question {
  /** The question, as a person would ask it. */
  String asks();

  /** What the baseline is. */
  String baseline();

  /** What is counted per second. */
  String counts();

  /** How many of them one call of a benchmark method does. */
  double perCall() default 1;

  /** How one can fool oneself with this question, and what was done against it. */
  String trap();
}
