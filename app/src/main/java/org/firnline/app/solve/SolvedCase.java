package org.firnline.app.solve;

import java.util.Map;
import java.util.Optional;

/**
 * One case and what came of it.
 *
 * @param id as in the file
 * @param kind as in the file; empty if it has none
 * @param answer the numbers under their keys; empty where refused
 * @param refusal why it could not be answered; empty where it was
 */
public record SolvedCase(
    String id, String kind, Map<String, Object> answer, Optional<String> refusal) {}
