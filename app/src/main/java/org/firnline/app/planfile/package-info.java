/**
 * The plan file: the YAML contract between people and planning. Reads one with every problem
 * reported together, fills what is missing with defaults that say where they come from, and writes
 * one from what was typed in a form. May use {@code science} only. Start reading at {@link
 * org.firnline.app.planfile.PlanFileReader}.
 */
@NullMarked
package org.firnline.app.planfile;

import org.jspecify.annotations.NullMarked;
