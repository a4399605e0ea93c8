package org.firnline.app.planfile;

import java.util.Optional;
import org.firnline.planning.PlanAnswer;
import org.firnline.planning.Planner;
import org.firnline.planning.WindowMap;

/**
 * A plan file with its answer.
 *
 * @param reading what was read
 * @param answer what planning says; empty when the file has problems, and for loads other than one
 *     kind of vial on shelves
 */
public record AnsweredPlan(PlanReading reading, Optional<PlanAnswer> answer) {

  /** Reads and answers a plan file. */
  public static AnsweredPlan of(String fileName, String text) {
    PlanReading reading = new PlanFileReader().read(fileName, text);
    return new AnsweredPlan(
        reading,
        reading
            .input()
            .filter(PlanInput::isVialsOnShelves)
            .map(input -> new Planner().answer(input.question())));
  }

  /** The window map of this plan, framed on what is worth looking at. */
  public Optional<WindowMap> map(int columns, int rows) {
    return answer.map(
        found -> MapFrame.draw(found.question(), found.hold().shelf_K(), columns, rows));
  }
}
