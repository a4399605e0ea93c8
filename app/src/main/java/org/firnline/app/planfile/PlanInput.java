package org.firnline.app.planfile;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.lab.Dryer;
import org.firnline.lab.LoadItem;
import org.firnline.planning.Hold;
import org.firnline.planning.PlanQuestion;

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
    Optional<LocalDateTime> start) {

  /**
   * The question for planning. A shelf temperature or a pressure alone is not enough to insist on a
   * hold; the reader refuses that.
   */
  public PlanQuestion question() {
    Optional<Hold> wanted =
        shelf_K.isPresent() && pressure_Pa.isPresent()
            ? Optional.of(new Hold(shelf_K.getAsDouble(), pressure_Pa.getAsDouble()))
            : Optional.empty();
    return new PlanQuestion(load, dryer, wanted, start);
  }
}
