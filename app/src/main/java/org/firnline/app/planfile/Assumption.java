package org.firnline.app.planfile;

import org.firnline.evidence.Provenance;

/**
 * A value the plan file leaves out and that was filled in.
 *
 * @param path its key, such as {@code product.solution_density}
 * @param text the value as it could have been typed
 * @param provenance where it comes from
 */
public record Assumption(String path, String text, Provenance provenance) {}
