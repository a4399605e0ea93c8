package org.firnline.app.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A file put with a run: a photo of a cake, an assay's result.
 *
 * @param id its number
 * @param runId the run it belongs to
 * @param content its bytes
 * @param kind what its bytes are, a name the one who kept it understands
 * @param originalName the name it came with, for people only
 * @param caption what it shows, in a person's words
 * @param author who added it; empty where nobody signs in
 * @param added when
 * @param withdrawn when it was withdrawn, if it was
 */
public record KeptAttachment(
    long id,
    long runId,
    KeptBytes content,
    String kind,
    String originalName,
    String caption,
    String author,
    Instant added,
    Optional<Instant> withdrawn) {}
