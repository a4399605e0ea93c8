package org.firnline.app.run;

import java.util.List;
import org.firnline.logs.Log;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.RawValue;

/**
 * A second run laid over the first.
 *
 * @param id its number
 * @param title its name
 * @param log its channels
 * @param offset_s what is added to its seconds so that the chosen moment falls on the first run's
 * @param series where its finer lines are asked for
 * @param suffix what is added to the names of its lines
 * @param aligned what was brought together, in words
 * @param differences how the phases of the two differ, in words
 */
record OtherRun(
    long id,
    String title,
    Log log,
    double offset_s,
    String series,
    String suffix,
    String aligned,
    List<String> differences) {

  OtherRun {
    differences = List.copyOf(differences);
  }

  /** Writes what the script needs to draw it. */
  void draw(ObjectNode other) {
    other.put("offset_s", offset_s).put("series", series).put("suffix", suffix);
    other.putRawValue(
        "columns",
        new RawValue(PictureLines.json(log, 0, log.time().duration_s(), RunPicture.FIRST_PIXELS)));
  }
}
