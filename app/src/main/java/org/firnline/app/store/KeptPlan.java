package org.firnline.app.store;

import java.time.Instant;

/**
 * A plan as it was typed.
 *
 * @param id its number
 * @param title what people call it
 * @param yaml the plan file, letter for letter
 * @param saved when it was saved
 */
public record KeptPlan(long id, String title, String yaml, Instant saved) {}
