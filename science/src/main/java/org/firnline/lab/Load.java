package org.firnline.lab;

import java.util.List;

/**
 * Everything that dries together on one dryer.
 *
 * @param portions at least one
 */
public record Load(List<Portion> portions) {

  public Load {
    portions = List.copyOf(portions);
    Check.that(
        !portions.isEmpty(),
        "empty-load",
        "load",
        "the load is empty",
        "needs one item",
        "add vessels");
  }

  /** A load of one owner's equal vessels without declared hazards. */
  public static Load of(LoadItem item, String owner) {
    return new Load(List.of(new Portion(item, owner, List.of())));
  }

  /** Number of vessels. */
  public int count() {
    return portions.stream().mapToInt(portion -> portion.item().count()).sum();
  }

  /** Ice in all vessels, kg. */
  public double totalIce() {
    return portions.stream().mapToDouble(portion -> portion.item().totalIce()).sum();
  }

  /** Every hazard that somebody declared, each once. */
  public List<Hazard> hazards() {
    return portions.stream().flatMap(portion -> portion.hazards().stream()).distinct().toList();
  }

  /** Whether some portions are food and some are not. */
  public boolean mixesFoodWithOthers() {
    long food =
        portions.stream().filter(portion -> portion.hazards().contains(new Hazard.Food())).count();
    return food > 0 && food < portions.size();
  }
}
