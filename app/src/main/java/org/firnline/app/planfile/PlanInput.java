package org.firnline.app.planfile;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.lab.Dryer;
import org.firnline.lab.LoadItem;

/**
 * A plan file understood: everything planning needs.
 *
 * @param title what people call the plan
 * @param load the vessels and what is in them
 * @param dryer the machine
 * @param shelf_K the shelf temperature to hold, K, if the person chose one
 * @param pressure_Pa the chamber pressure to hold, Pa, if the person chose one
 * @param start when the load goes in, in the laboratory's own time, if said
 */
public record PlanInput(
    String title,
    LoadItem load,
    Dryer dryer,
    OptionalDouble shelf_K,
    OptionalDouble pressure_Pa,
    Optional<LocalDateTime> start) {}
