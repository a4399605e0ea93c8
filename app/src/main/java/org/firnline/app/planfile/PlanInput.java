package org.firnline.app.planfile;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.firnline.lab.Dryer;
import org.firnline.lab.Load;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Vial;
import org.firnline.planning.Hold;
import org.firnline.planning.PlanQuestion;

/**
 * A plan file understood: everything planning needs.
 *
 * @param title what people call the plan
 * @param whole everything that dries together, in the order of the file
 * @param dryer the machine
 * @param room_K temperature of the room
 * @param wishes what is wanted of the recipe
 * @param shelf_K the shelf temperature to hold, K, if the person chose one
 * @param pressure_Pa the chamber pressure to hold, Pa, if the person chose one
 * @param start when primary drying begins, in the laboratory's own time, if said
 */
public record PlanInput(
    String title,
    Load whole,
    Dryer dryer,
    double room_K,
    PlanWishes wishes,
    OptionalDouble shelf_K,
    OptionalDouble pressure_Pa,
    Optional<LocalDateTime> start) {

  /** The first item of the load. */
  public LoadItem load() {
    return whole.portions().get(0).item();
  }

  /**
   * Whether it is one kind of vial on a shelf under pressure control: what the window map of one
   * hold is made for.
   */
  public boolean isVialsOnShelves() {
    return whole.portions().size() == 1
        && load().vessel() instanceof Vial
        && dryer.shelves().isPresent()
        && dryer.pressureControl().isPresent();
  }

  /**
   * The question for planning. A shelf temperature or a pressure alone is not enough to insist on a
   * hold; the reader refuses that.
   */
  public PlanQuestion question() {
    Optional<Hold> wanted =
        shelf_K.isPresent() && pressure_Pa.isPresent()
            ? Optional.of(new Hold(shelf_K.getAsDouble(), pressure_Pa.getAsDouble()))
            : Optional.empty();
    return new PlanQuestion(load(), dryer, wanted, start);
  }
}
