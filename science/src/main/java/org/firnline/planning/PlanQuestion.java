package org.firnline.planning;

import java.time.LocalDateTime;
import java.util.Optional;
import org.firnline.lab.Dryer;
import org.firnline.lab.LoadItem;

/**
 * What a plan must answer.
 *
 * @param load what is to be dried
 * @param dryer on which machine
 * @param wanted settings the person insists on; empty to have them recommended
 * @param start when primary drying begins, by the clock on the wall; empty if not decided
 */
public record PlanQuestion(
    LoadItem load, Dryer dryer, Optional<Hold> wanted, Optional<LocalDateTime> start) {}
