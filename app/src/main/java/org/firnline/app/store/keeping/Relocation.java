package org.firnline.app.store.keeping;

import java.util.Map;
import org.firnline.app.store.OpenStore;
import org.firnline.app.store.audit.Action;

/** Moves a laboratory's database to another one; its raw files stay where they are. */
public final class Relocation {
  private Relocation() {}

  /**
   * Copies, compares and verifies; the laboratory that is left stays as it was.
   *
   * @param from the laboratory
   * @param to the same folder, opened on the receiving, empty database
   * @return what the verification of the receiver read
   * @throws IllegalStateException if the receiver is not empty, or the laboratory or its copy is
   *     not as it was written
   */
  public static Verdict move(OpenStore from, OpenStore to) {
    mustBeUnaltered("the laboratory", Verification.of(from));
    long rows = Moving.copy(from.source(), to.source()).stream().mapToLong(TableDigest::rows).sum();
    mustBeUnaltered("the copy", Verification.of(to));
    to.changes().note(Action.IMPORT, "laboratory", "database", Map.of("rows", Long.toString(rows)));
    return Verification.of(to);
  }

  private static void mustBeUnaltered(String what, Verdict verdict) {
    verdict
        .first()
        .ifPresent(
            problem -> {
              throw new IllegalStateException(what + " is not as it was written: " + problem);
            });
  }
}
