package org.firnline.lab;

import java.util.List;

/**
 * One person's part of a load.
 *
 * @param item the vessels
 * @param owner who answers for them; not blank
 * @param hazards what the owner declares; empty if nothing was declared
 */
public record Portion(LoadItem item, String owner, List<Hazard> hazards) {

  public Portion {
    Check.named(owner, "owner");
    hazards = List.copyOf(hazards);
  }
}
