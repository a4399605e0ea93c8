package org.firnline.app.store.audit;

/** A change was refused because the controlled profile asks why. Nothing was written. */
public class ReasonMissing extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Pages answer it with the question. */
  public ReasonMissing() {
    super("this laboratory keeps controlled records: a change needs its reason");
  }
}
