package org.firnline.app.store.audit;

/** Knows on whose behalf the present thread works. */
@FunctionalInterface
public interface Occasions {
  /** Who is acting now. */
  Occasion now();
}
