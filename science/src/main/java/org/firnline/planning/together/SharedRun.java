package org.firnline.planning.together;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firnline.evidence.Band;
import org.firnline.lab.Hazard;
import org.firnline.lab.Load;
import org.firnline.lab.Portion;
import org.firnline.planning.design.DesignWishes;
import org.firnline.planning.design.Proposal;
import org.firnline.planning.design.RecipeDesign;
import org.firnline.planning.design.RecipeDesigner;
import org.firnline.planning.forecast.ItemForecast;
import org.firnline.planning.forecast.LoadOutlook;
import org.firnline.planning.forecast.Sharing;

/**
 * A run of several items and the runs that each could have alone.
 *
 * @param design the recipe for all together
 * @param items each item, in the order of the load
 * @param rulesTemperature number of the item that comes nearest to its critical temperature
 * @param rulesTime number of the item that is dry last
 * @param conflicts who holds whom up, or should not be there
 */
public record SharedRun(
    RecipeDesign design,
    List<ItemAlone> items,
    int rulesTemperature,
    int rulesTime,
    List<Conflict> conflicts) {

  /** Less than this share of the shared time is no conflict; an assumption. */
  private static final double WORTH_SAYING = 0.1;

  public SharedRun {
    items = List.copyOf(items);
    conflicts = List.copyOf(conflicts);
  }

  /**
   * Designs the shared run and every item alone.
   *
   * @throws IllegalArgumentException if the load has a single item
   */
  public static SharedRun of(Sharing sharing, DesignWishes wishes) {
    Load load = sharing.load();
    if (load.portions().size() < 2) {
      throw new IllegalArgumentException("a shared run needs two items or more");
    }
    RecipeDesign design = new RecipeDesigner(sharing, wishes).design();
    LoadOutlook outlook = design.proposals().get(0).outlook();
    List<Optional<Band>> alone =
        load.portions().stream().map(portion -> alone(sharing, portion, wishes)).toList();
    double end =
        outlook.items().stream().mapToDouble(i -> i.lastTime_s().best()).max().orElseThrow();
    List<ItemAlone> items =
        IntStream.range(0, alone.size())
            .mapToObj(
                i ->
                    new ItemAlone(
                        outlook.items().get(i), alone.get(i), waits_s(outlook.items().get(i), end)))
            .toList();
    int temperature = rulesTemperature(sharing, outlook);
    int time = rulesTime(outlook);
    return new SharedRun(
        design, items, temperature, time, conflicts(load, items, temperature, time, outlook));
  }

  /** How long an item waits for the last of the others, s. */
  private static double waits_s(ItemForecast forecast, double end_s) {
    return Double.isFinite(end_s) ? end_s - forecast.lastTime_s().best() : 0;
  }

  private static Optional<Band> alone(Sharing sharing, Portion portion, DesignWishes wishes) {
    Sharing own = sharing.with(new Load(List.of(portion)));
    RecipeDesign design = new RecipeDesigner(own, wishes).design();
    return design
        .of(Proposal.Kind.DESIGNED)
        .or(() -> design.of(Proposal.Kind.AS_IT_RUNS))
        .map(proposal -> proposal.outlook().lastTime_s());
  }

  /** By the upper end of its temperature against its critical temperature. */
  private static int rulesTemperature(Sharing sharing, LoadOutlook outlook) {
    int found = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outlook.items().size(); i++) {
      double limit =
          sharing.load().portions().get(i).item().product().critical().temperature().best();
      double margin = limit - outlook.items().get(i).warmest_K().high();
      if (margin < nearest) {
        nearest = margin;
        found = i;
      }
    }
    return found;
  }

  private static int rulesTime(LoadOutlook outlook) {
    int found = 0;
    for (int i = 1; i < outlook.items().size(); i++) {
      double latest = outlook.items().get(found).lastTime_s().best();
      found = outlook.items().get(i).lastTime_s().best() > latest ? i : found;
    }
    return found;
  }

  private static List<Conflict> conflicts(
      Load load, List<ItemAlone> items, int temperature, int time, LoadOutlook outlook) {
    List<Conflict> conflicts = new ArrayList<>();
    double end = items.get(time).together().lastTime_s().best();
    boolean vaporDecides = outlook.peakPressure_Pa().high() > outlook.peakPressure_Pa().low();
    for (int i = 0; i < items.size(); i++) {
      ItemAlone item = items.get(i);
      if (i != time && item.waits_s() > WORTH_SAYING * end) {
        conflicts.add(new Conflict(time, i, Conflict.Reason.TIME, item.waits_s()));
      }
      double slowed =
          item.together().lastTime_s().best()
              - item.alone_s().map(Band::best).orElse(Double.POSITIVE_INFINITY);
      if (slowed > WORTH_SAYING * end) {
        Conflict.Reason reason =
            i == temperature || vaporDecides ? Conflict.Reason.VAPOR : Conflict.Reason.TEMPERATURE;
        int cause = i == temperature ? other(i, items.size(), time) : temperature;
        conflicts.add(new Conflict(cause, i, reason, slowed));
      }
    }
    addDeclared(load, conflicts);
    return conflicts;
  }

  private static int other(int item, int size, int time) {
    return time == item ? (item + 1) % size : time;
  }

  private static void addDeclared(Load load, List<Conflict> conflicts) {
    for (int i = 0; i < load.portions().size(); i++) {
      Portion portion = load.portions().get(i);
      boolean food = portion.hazards().stream().anyMatch(Hazard.Food.class::isInstance);
      if (food && load.mixesFoodWithOthers()) {
        conflicts.add(new Conflict(i, i, Conflict.Reason.FOOD, 0));
      }
      boolean volatileHazard =
          portion.hazards().stream()
              .anyMatch(h -> h instanceof Hazard.Solvent || h instanceof Hazard.Corrosive);
      if (volatileHazard) {
        conflicts.add(new Conflict(i, i, Conflict.Reason.SOLVENT_OR_ACID, 0));
      }
    }
  }
}
